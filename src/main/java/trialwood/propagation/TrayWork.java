package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;

/** Trays that wait to be looked at, closed or counted off the mist, as the round has them. */
@Component
public class TrayWork implements WorkSource {

  /** A week without a look leaves a hole in the rooting curve that no later look fills. */
  static final WorkKind LOOKS = new WorkKind("looks", "Looks at trays", Role.BENCH, 7);

  static final WorkKind FINAL_COUNTS =
      new WorkKind("final-counts", "Final counts of trays", Role.BENCH, WorkKind.FOR_GOOD);

  static final WorkKind WEANINGS =
      new WorkKind("weaning-counts", "Counts off the mist", Role.BENCH, 14);

  private final Rounds rounds;

  TrayWork(Rounds rounds) {
    this.rounds = rounds;
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return rounds.on(today).trays().stream().filter(TrayWork::asks).map(TrayWork::work).toList();
  }

  /** What is due on one tray. */
  public Optional<DueWork> due(String tray, LocalDate today) {
    return rounds.on(today).trays().stream()
        .filter(TrayWork::asks)
        .filter(waiting -> waiting.tray().equals(tray))
        .findFirst()
        .map(TrayWork::work);
  }

  /** It waits, or would if nothing kept people from it. */
  private static boolean asks(RoundTray tray) {
    return tray.isWaiting() || tray.blockedBy() != null && tray.due() != null;
  }

  private static DueWork work(RoundTray tray) {
    return switch (tray.task()) {
      case LOOK -> work(tray, LOOKS, "Look at tray ", ", day %d after sticking");
      case FINAL_COUNT -> work(tray, FINAL_COUNTS, "Close tray ", ", day %d after sticking");
      case WEANING -> work(tray, WEANINGS, "Count off the mist in tray ", ", %d days off the mist");
    };
  }

  private static DueWork work(RoundTray tray, WorkKind kind, String what, String day) {
    DueWork work =
        kind.at(
                Objects.requireNonNullElse(tray.bench(), "bench"),
                Objects.requireNonNull(tray.due()),
                what + tray.tray(),
                tray.accession() + day.formatted(tray.day()),
                "/bench/trays/" + tray.tray() + "/" + tray.task().form() + "?round=on")
            .readAt("/bench/trays/" + tray.tray());
    return tray.blockedBy() == null ? work : work.blockedBy(tray.blockedBy());
  }
}
