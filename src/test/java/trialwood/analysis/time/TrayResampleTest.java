package trialwood.analysis.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

class TrayResampleTest {

  private static final Function<List<RootedBetween>, Optional<Double>> MEDIAN =
      looks ->
          TimeModel.withNeverRooting(TimeShape.LOG_NORMAL)
              .fitOne(looks)
              .value()
              .map(fit -> fit.dayOfRooters(0, 0.5).day());

  @Test
  void trays_that_differ_widen_the_error() {
    var random = new SplittableRandom(21);
    List<List<RootedBetween>> alike = new ArrayList<>();
    List<List<RootedBetween>> apart = new ArrayList<>();
    for (int tray = 0; tray < 6; tray++) {
      double shift = tray % 2 == 0 ? 0.2 : -0.2;
      alike.add(Looks.logNormal(random, 48, Math.log(22), 0.25, 0.2));
      apart.add(Looks.logNormal(random, 48, Math.log(22) + shift, 0.25, 0.2));
    }
    TrayResample even = TrayResample.of(alike, MEDIAN).value().orElseThrow();
    TrayResample uneven = TrayResample.of(apart, MEDIAN).value().orElseThrow();
    assertThat(uneven.standardError()).isGreaterThan(2 * even.standardError());
    assertThat(uneven.interval().width()).isGreaterThan(even.interval().width());
    assertThat(even.made() + even.lacking()).isEqualTo(TrayResample.DRAWS);
    assertThat(TrayResample.of(apart, MEDIAN)).isEqualTo(TrayResample.of(apart, MEDIAN));
  }

  @Test
  void the_error_of_a_mean_of_trays_is_the_textbook_one() {
    // bootstrap of a mean of k values: √(Σ(x − x̄)²/k²), Efron and Tibshirani (1993), section 5.2
    List<List<RootedBetween>> trays = new ArrayList<>();
    for (int day = 20; day < 40; day++) {
      trays.add(List.of(new RootedBetween(day - 1, day, 1)));
    }
    TrayResample resample =
        TrayResample.of(
                trays,
                looks ->
                    Optional.of(
                        looks.stream().mapToDouble(RootedBetween::by).average().orElseThrow()))
            .value()
            .orElseThrow();
    assertThat(resample.standardError()).isCloseTo(Math.sqrt(665.0 / 400), within(0.1));
  }

  @Test
  void two_trays_say_nothing_about_trays() {
    List<RootedBetween> tray = List.of(new RootedBetween(14, 21, 24));
    assertThat(TrayResample.of(Collections.nCopies(2, tray), MEDIAN).lack())
        .contains("The spread between trays needs at least three trays.");
  }

  @Test
  void an_estimate_that_is_seldom_there_is_no_answer() {
    List<RootedBetween> tray = List.of(RootedBetween.notBy(42, 24));
    assertThat(TrayResample.of(Collections.nCopies(4, tray), MEDIAN).lack())
        .contains("Most draws of trays gave no estimate.");
  }
}
