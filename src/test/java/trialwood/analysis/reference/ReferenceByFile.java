package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The rows of {@link ReferenceTest} file by file, every fit made anew. Tests by mutation run it: a
 * changed class must not meet what was fitted before the change. Without 12 and 13, which take
 * long: quantiles have tests of their own, and mixed models are in 06.
 */
class ReferenceByFile {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "01-binomial-intervals.csv",
        "02-two-proportions.csv",
        "03-overdispersed-trays.csv",
        "04-time-to-event.csv",
        "05-anova.csv",
        "06-multisite.csv",
        "07-stability.csv",
        "08-longitudinal.csv",
        "09-selection.csv",
        "10-stock-buildup.csv",
        "11-colour.csv",
        "14-nist-anova.csv",
        "15-tray-posterior.csv"
      })
  void every_row_of_the_file_is_met(String file) {
    var methods = new Methods();
    assertThat(
            ReferenceFolder.ours()
                .rows(file)
                .filter(row -> !LeftOut.REASONS.containsKey(row.method()))
                .filter(row -> !row.meets(methods.answer(row)))
                .findFirst())
        .isEmpty();
  }
}
