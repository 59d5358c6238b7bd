package trialwood.gate;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.record.Recorder;
import trialwood.record.Refused;

/** Takes decisions at gates: keeps each with its evidence, and moves the candidate. */
@Service
@Transactional
public class Decisions {

  private final Candidates candidates;
  private final Reviews reviews;
  private final PastDecisions past;
  private final Recorder recorder;
  private final Clock clock;

  Decisions(
      Candidates candidates, Reviews reviews, PastDecisions past, Recorder recorder, Clock clock) {
    this.candidates = candidates;
    this.reviews = reviews;
    this.past = past;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * Decides on the evidence of the ruling's day. Going against the line needs a reason, a hold
   * needs a day on which it ends.
   *
   * @throws Refused when the candidate does not stand at that gate, the day has not come or lies
   *     before the last decision, no policy was in force, or reason or date are lacking
   */
  public Decision decide(Ruling ruling) {
    past.findFirstByAccessionIdAndOnDateAfterOrderByOnDateDesc(ruling.accessionId(), ruling.on())
        .ifPresent(
            later -> {
              throw new Refused(
                  "on",
                  "It was decided on %s already; this decision comes after that one."
                      .formatted(Words.date(later.onDate())));
            });
    Set<UUID> one = Set.of(ruling.accessionId());
    return decide(ruling, reviews.of(ruling.gate(), one, ruling.on()).get(ruling.accessionId()));
  }

  /**
   * Decides as {@link #decide(Ruling)} does, in the order they come, where the candidate was
   * reviewed among others.
   *
   * @param review on the ruling's day at its gate; none where no policy was in force
   */
  public Decision decide(Ruling ruling, @Nullable Review review) {
    Candidate candidate =
        candidates
            .findById(ruling.accessionId())
            .orElseThrow(() -> new Refused("accession", "There is no such candidate."));
    if (ruling.on().isAfter(LocalDate.now(clock))) {
      throw new Refused("on", "A decision cannot be dated in the future.");
    }
    if (review == null) {
      throw new Refused("on", "No gate policy was in force for the crop on that day.");
    }
    Decision decision = new Decision(ruling, review, recorder.by(ruling.personId()));
    move(candidate, decision);
    return past.save(decision);
  }

  private static void move(Candidate candidate, Decision decision) {
    switch (decision.choice()) {
      case ADVANCE -> candidate.advanceFrom(decision.gate());
      case HOLD -> candidate.holdAt(decision.gate(), Objects.requireNonNull(decision.holdUntil()));
      case DISCARD -> candidate.discardAt(decision.gate());
    }
  }
}
