package trialwood.propagation;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All batches. */
public interface Batches extends JpaRepository<Batch, UUID> {

  Optional<Batch> findByCode(String code);
}
