package trialwood.gate;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.InPercent;

/** Evidence as the bench supplies it: trays of 24. */
final class Bench {

  static final LocalDate JULY = LocalDate.of(2022, 7, 20);

  private Bench() {}

  static Evidence rooted(int... ofTwentyFour) {
    return run(ofTwentyFour).build();
  }

  static EvidenceBuilder run(int... ofTwentyFour) {
    List<TrayCount> trays =
        Arrays.stream(ofTwentyFour).mapToObj(rooted -> new TrayCount(rooted, 24)).toList();
    TrayPosterior posterior = TrayPosterior.of(trays);
    String counts =
        Arrays.stream(ofTwentyFour).mapToObj(String::valueOf).collect(Collectors.joining(", "));
    return Evidence.of(100 * posterior.rawShare(), "%", JULY, "Rooted ÷ stuck.")
        .from(posterior.stuck(), trays.size(), counts)
        .believing(new InPercent(posterior), 0.95);
  }

  static Evidence offTheMist(int alive, int rooted) {
    return Evidence.of(100.0 * alive / rooted, "%", JULY, "Alive 14 days off the mist ÷ rooted.")
        .from(rooted, 3, alive + " of " + rooted)
        .build();
  }
}
