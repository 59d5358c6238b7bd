package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Batches that were taken back. */
public interface UndoneBatches extends JpaRepository<UndoneBatch, UUID> {

  List<UndoneBatch> findByRunIdOrderById(UUID runId);
}
