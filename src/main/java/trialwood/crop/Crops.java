package trialwood.crop;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The crops of the nursery. */
public interface Crops extends JpaRepository<Crop, UUID> {

  Optional<Crop> findByCode(String code);
}
