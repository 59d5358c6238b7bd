package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Which bench the blocks of all runs stand on. */
public interface BenchBlocks extends JpaRepository<BenchBlock, UUID> {

  List<BenchBlock> findByRunId(UUID runId);

  void deleteByRunId(UUID runId);
}
