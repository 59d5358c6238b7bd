package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The places to which trays were moved. */
public interface TrayPlaces extends JpaRepository<TrayPlace, UUID> {

  List<TrayPlace> findByTrayIdOrderByFromDateAscIdAsc(UUID trayId);
}
