package trialwood.label;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The label papers of the nursery. */
public interface LabelFormats extends JpaRepository<LabelFormat, UUID> {

  Optional<LabelFormat> findByName(String name);

  List<LabelFormat> findAllByOrderByName();
}
