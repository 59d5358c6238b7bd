package trialwood.label;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The printers of the nursery. */
public interface Printers extends JpaRepository<Printer, UUID> {

  Optional<Printer> findByName(String name);

  List<Printer> findAllByOrderByName();
}
