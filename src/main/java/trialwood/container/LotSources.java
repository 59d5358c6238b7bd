package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Where the plants of all lots came from. */
public interface LotSources extends JpaRepository<LotSource, UUID> {

  List<LotSource> findByLotId(UUID lotId);

  List<LotSource> findBySourceId(UUID sourceId);

  boolean existsByLotIdAndSourceId(UUID lotId, UUID sourceId);
}
