package trialwood.trial;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All trials. */
public interface Trials extends JpaRepository<Trial, UUID> {

  Optional<Trial> findByCode(String code);

  boolean existsByCode(String code);
}
