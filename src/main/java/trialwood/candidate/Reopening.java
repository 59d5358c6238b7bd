package trialwood.candidate;

import java.time.LocalDate;
import java.util.UUID;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.CandidateEvent.Kind;
import trialwood.record.Check;
import trialwood.record.Recorded;
import trialwood.record.Refused;

/** Takes discards back. The decision stays on record, and so does the reason for reopening. */
@Service
@Transactional
public class Reopening {

  private final Candidates candidates;
  private final CandidateEvents events;

  Reopening(Candidates candidates, CandidateEvents events) {
    this.candidates = candidates;
    this.events = events;
  }

  /**
   * The candidate waits again at the gate at which it was discarded.
   *
   * @throws Refused when it is not discarded, or without a reason
   */
  public void reopen(UUID accessionId, LocalDate on, String reason, Recorded recorded) {
    Candidate candidate =
        candidates
            .findById(accessionId)
            .orElseThrow(() -> new Refused("accession", "There is no such candidate."));
    Check.that()
        .holds(!reason.isBlank(), "reason", "Say why it is looked at again.")
        .fits(reason.strip(), 300, "reason")
        .orRefuse();
    candidate.reopen();
    events.save(new CandidateEvent(accessionId, on, Kind.REOPENED, reason, recorded));
  }

  /**
   * Takes a discard back that comes in, from a file, after the reopening it led to. Each reopening
   * takes one discard back, the first the first.
   *
   * @param discards of the candidate on record, the one just taken in included
   */
  public void catchUp(UUID accessionId, long discards) {
    if (events.countByAccessionIdAndKind(accessionId, Kind.REOPENED) >= discards) {
      candidates.findById(accessionId).orElseThrow().reopen();
    }
  }
}
