package trialwood.container;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All plants that left lots. */
public interface LotOutgoings extends JpaRepository<LotOutgoing, UUID> {

  List<LotOutgoing> findByLotIdOrderByOnDate(UUID lotId);
}
