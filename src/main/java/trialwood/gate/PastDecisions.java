package trialwood.gate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import trialwood.candidate.Stage;

/** All decisions, each with its lines. */
public interface PastDecisions extends JpaRepository<Decision, UUID> {

  /** The latest one after that day, whatever the gate. */
  Optional<Decision> findFirstByAccessionIdAndOnDateAfterOrderByOnDateDesc(
      UUID accessionId, LocalDate day);

  @EntityGraph(attributePaths = "lines")
  List<Decision> findByAccessionIdOrderByOnDateDescIdDesc(UUID accessionId);

  @EntityGraph(attributePaths = "lines")
  List<Decision> findByGateAndOnDateBetweenOrderByOnDateAscIdAsc(
      Stage gate, LocalDate from, LocalDate until);
}
