package trialwood.observation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All observations. */
public interface Observations extends JpaRepository<Observation, UUID> {

  List<Observation> findByUnitIdOrderByOnDate(UUID unitId);

  boolean existsBySupersedesId(UUID earlier);
}
