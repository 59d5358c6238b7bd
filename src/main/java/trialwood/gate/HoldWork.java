package trialwood.gate;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.web.Measures;

/**
 * Reminds of every hold a season before it ends: what a candidate is held for, a flower or a
 * winter, is over when the hold is.
 */
@Component
class HoldWork implements WorkSource {

  private static final WorkKind HOLDS =
      new WorkKind("holds", "Holds that end", Role.BREEDER, WorkKind.FOR_GOOD);

  private static final int MONTHS_AHEAD = 3;

  private final Waiting waiting;
  private final Measures measures;

  HoldWork(Waiting waiting, Measures measures) {
    this.waiting = waiting;
    this.measures = measures;
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return waiting.held(today, today.plusMonths(MONTHS_AHEAD)).stream().map(this::look).toList();
  }

  private DueWork look(Waiting.Held held) {
    return HOLDS
        .at(
            "Desk",
            held.until(),
            "Look at %s again".formatted(held.code()),
            "held at the gate of %s until %s"
                .formatted(held.gate().word(), measures.date(held.until())),
            "/gates/%s/%s".formatted(held.gate().key(), held.code()))
        .from(held.until().minusMonths(MONTHS_AHEAD));
  }
}
