package trialwood.candidate;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import trialwood.candidate.CandidateEvent.Kind;

/** What happened to candidates. */
public interface CandidateEvents extends JpaRepository<CandidateEvent, UUID> {

  List<CandidateEvent> findByAccessionIdOrderByOnDate(UUID accessionId);

  /** The loss of the ortet, where that was the last word on it up to a day. */
  default Optional<CandidateEvent> ortetLost(UUID accessionId, LocalDate day) {
    return findByAccessionIdOrderByOnDate(accessionId).stream()
        .filter(event -> event.kind().isOfOrtet() && !event.onDate().isAfter(day))
        .reduce((earlier, later) -> later)
        .filter(last -> last.kind() == Kind.ORTET_LOST);
  }

  long countByAccessionIdAndKind(UUID accessionId, CandidateEvent.Kind kind);
}
