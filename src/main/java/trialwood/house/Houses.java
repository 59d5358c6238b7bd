package trialwood.house;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The houses of the nursery. */
public interface Houses extends JpaRepository<House, UUID> {

  List<House> findAllByOrderByNameKey();

  Optional<House> findByNameKey(String nameKey);
}
