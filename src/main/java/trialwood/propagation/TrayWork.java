package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkSource;

/** Trays that wait to be looked at, closed or counted off the mist, as the round has them. */
@Component
public class TrayWork implements WorkSource {

  private final Rounds rounds;

  TrayWork(Rounds rounds) {
    this.rounds = rounds;
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    return rounds.on(today).trays().stream()
        .filter(RoundTray::isWaiting)
        .map(TrayWork::work)
        .toList();
  }

  private static DueWork work(RoundTray tray) {
    return new DueWork(
        Objects.requireNonNullElse(tray.bench(), "bench"),
        Objects.requireNonNull(tray.due()),
        switch (tray.task()) {
              case LOOK -> "Look at tray ";
              case FINAL_COUNT -> "Close tray ";
              case WEANING -> "Count off the mist in tray ";
            }
            + tray.tray(),
        tray.accession()
            + (tray.task() == BenchTask.WEANING
                ? ", %d days off the mist".formatted(tray.day())
                : ", day %d after sticking".formatted(tray.day())),
        "/bench/trays/" + tray.tray() + "/" + tray.task().form() + "?round=on");
  }
}
