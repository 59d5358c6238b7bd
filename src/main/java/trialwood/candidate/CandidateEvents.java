package trialwood.candidate;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** What happened to candidates. */
public interface CandidateEvents extends JpaRepository<CandidateEvent, UUID> {

  List<CandidateEvent> findByAccessionIdOrderByOnDate(UUID accessionId);

  long countByAccessionIdAndKind(UUID accessionId, CandidateEvent.Kind kind);
}
