package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All losses from lots. */
public interface LotLosses extends JpaRepository<LotLoss, UUID> {

  List<LotLoss> findByLotIdOrderByOnDate(UUID lotId);

  boolean existsBySupersedesId(UUID earlier);
}
