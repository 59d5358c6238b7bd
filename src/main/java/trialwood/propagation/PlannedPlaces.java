package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The places of all bench plans. */
public interface PlannedPlaces extends JpaRepository<PlannedPlace, UUID> {

  List<PlannedPlace> findByRunIdOrderByBlockAscPlaceAsc(UUID runId);

  List<PlannedPlace> findByRunIdAndAccessionIdAndNthOrderByBlock(
      UUID runId, UUID accessionId, int nth);

  void deleteByRunId(UUID runId);
}
