package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All rulings on trays. */
public interface TrayRulings extends JpaRepository<TrayRuling, UUID> {

  List<TrayRuling> findByTrayIdOrderByOnDate(UUID trayId);
}
