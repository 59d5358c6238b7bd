package trialwood.propagation;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All sticking runs. */
public interface StickingRuns extends JpaRepository<StickingRun, UUID> {

  Optional<StickingRun> findByCode(String code);
}
