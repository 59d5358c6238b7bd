package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All that was done to lots. */
public interface LotCares extends JpaRepository<LotCare, UUID> {

  List<LotCare> findByLotIdOrderByOnDate(UUID lotId);

  boolean existsBySupersedesId(UUID earlier);
}
