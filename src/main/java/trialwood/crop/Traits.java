package trialwood.crop;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The traits of all crops. */
public interface Traits extends JpaRepository<Trait, UUID> {

  List<Trait> findByCropIdOrderByCode(UUID cropId);

  Optional<Trait> findByCropIdAndCode(UUID cropId, String code);
}
