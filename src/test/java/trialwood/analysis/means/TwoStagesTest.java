package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import trialwood.analysis.Answer;

class TwoStagesTest {

  private static PlotValues series(int environments, int blocks, long seed) {
    var random = new SplittableRandom(seed);
    var values = new ArrayList<Double>();
    var env = new ArrayList<String>();
    var block = new ArrayList<String>();
    var entry = new ArrayList<String>();
    for (int i = 0; i < environments; i++) {
      for (int j = 0; j < blocks; j++) {
        for (String name : List.of("a", "b", "c", "d")) {
          values.add(20 + random.nextGaussian() * (1 + i));
          env.add("site" + i);
          block.add("block" + j);
          entry.add(name);
        }
      }
    }
    return PlotValues.of(values.stream().mapToDouble(v -> v).toArray())
        .by("env", env)
        .by("block", block)
        .by("entry", entry);
  }

  @Test
  void a_noisy_site_weighs_less() {
    TwoStages stages = TwoStages.of(series(2, 3, 7), "env", "block", "entry").value().orElseThrow();
    double quiet = difference(stages, "site0");
    double noisy = difference(stages, "site1");
    double overall =
        stages.overall().means("entry").difference("b", "a").value().orElseThrow().estimate();
    double w = 1 / stages.environments().get("site0").model().sequential().residualMs();
    double v = 1 / stages.environments().get("site1").model().sequential().residualMs();
    assertThat(w).isGreaterThan(v);
    assertThat(overall).isCloseTo((w * quiet + v * noisy) / (w + v), within(1e-9));
  }

  @Test
  void sites_with_one_block_have_no_error_of_their_own() {
    Answer<TwoStages> stages = TwoStages.of(series(3, 1, 3), "env", "block", "entry");
    assertThat(stages.value()).isEmpty();
    assertThat(stages.lack())
        .contains("No environment has an error of its own, among them [site0, site1, site2].");
  }

  @Test
  void one_site_gives_no_error_over_sites() {
    assertThat(TwoStages.of(series(1, 3, 5), "env", "block", "entry").value()).isEmpty();
  }

  private static double difference(TwoStages stages, String site) {
    return stages
        .environments()
        .get(site)
        .means()
        .difference("b", "a")
        .value()
        .orElseThrow()
        .estimate();
  }
}
