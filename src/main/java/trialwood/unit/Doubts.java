package trialwood.unit;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Contradictions that were seen, answered or not. */
public interface Doubts extends JpaRepository<Doubt, UUID> {

  List<Doubt> findByUnitIdOrderByOnDate(UUID unitId);

  boolean existsByUnitIdAndOnDateAndQuestion(UUID unitId, LocalDate onDate, String question);
}
