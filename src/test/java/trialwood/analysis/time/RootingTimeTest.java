package trialwood.analysis.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.time.RootingTime.NoLooks;
import trialwood.analysis.time.RootingTime.NotReached;
import trialwood.analysis.time.RootingTime.Reached;
import trialwood.analysis.time.RootingWindow.Timing;

class RootingTimeTest {

  /** Looks before, inside and after the window of an easy softwood crop; invented counts. */
  private static final List<RootingLook> LOOKS =
      List.of(
          new RootingLook(14, 6, 0),
          new RootingLook(18, 6, 1),
          new RootingLook(21, 3, 2),
          new RootingLook(21, 3, 1),
          new RootingLook(24, 6, 5),
          new RootingLook(28, 6, 6));

  @Test
  void half_rooted_lies_between_two_looks() {
    assertThat(RootingTime.ofHalf(LOOKS)).isEqualTo(new Reached(18, 21));
  }

  @Test
  void a_larger_share_takes_longer() {
    assertThat(RootingTime.of(LOOKS, 0.8)).isEqualTo(new Reached(21, 24));
    assertThat(RootingTime.of(LOOKS, 1)).isEqualTo(new Reached(24, 28));
  }

  @Test
  void looks_of_one_day_are_pooled_over_trays() {
    List<RootingLook> looks = List.of(new RootingLook(18, 2, 2), new RootingLook(18, 10, 3));
    assertThat(RootingTime.ofHalf(looks)).isEqualTo(new NotReached(18));
  }

  @Test
  void a_share_met_exactly_is_reached() {
    assertThat(RootingTime.of(List.of(new RootingLook(21, 20, 11)), 0.55))
        .isEqualTo(new Reached(0, 21));
  }

  @Test
  void the_order_of_the_looks_changes_nothing() {
    var shuffled = new ArrayList<>(LOOKS);
    Collections.shuffle(shuffled, new Random(7));
    assertThat(RootingTime.ofHalf(shuffled)).isEqualTo(RootingTime.ofHalf(LOOKS));
  }

  @Test
  void rooted_at_the_first_look_means_some_day_since_sticking() {
    assertThat(RootingTime.ofHalf(List.of(new RootingLook(21, 4, 3))))
        .isEqualTo(new Reached(0, 21));
  }

  @Test
  void a_later_sample_that_shows_less_does_not_undo_an_earlier_one() {
    List<RootingLook> looks =
        List.of(new RootingLook(18, 4, 0), new RootingLook(21, 4, 2), new RootingLook(24, 4, 1));
    assertThat(RootingTime.ofHalf(looks)).isEqualTo(new Reached(18, 21));
  }

  @Test
  void not_reached_and_no_looks_are_answers() {
    assertThat(RootingTime.ofHalf(List.of(new RootingLook(42, 6, 2))))
        .isEqualTo(new NotReached(42));
    assertThat(RootingTime.ofHalf(List.of())).isEqualTo(new NoLooks());
  }

  /** The window of 18 to 24 days: common practice, no source. */
  @ParameterizedTest
  @CsvSource({
    "0,14,EARLIER",
    "14,17,EARLIER",
    "14,18,OPEN",
    "0,21,OPEN",
    "17,18,WITHIN",
    "18,21,WITHIN",
    "21,24,WITHIN",
    "21,28,OPEN",
    "24,28,LATER",
    "35,42,LATER"
  })
  void an_interval_is_judged_against_the_window_of_an_easy_softwood_crop(
      int after, int by, Timing expected) {
    assertThat(RootingWindow.EASY_SOFTWOOD.timingOf(new Reached(after, by))).isEqualTo(expected);
  }

  @Test
  void a_crop_that_has_not_rooted_is_late_only_after_the_window() {
    RootingWindow window = RootingWindow.EASY_SOFTWOOD;
    assertThat(window.timingOf(new NotReached(21))).isEqualTo(Timing.OPEN);
    assertThat(window.timingOf(new NotReached(24))).isEqualTo(Timing.LATER);
    assertThat(window.timingOf(new NoLooks())).isEqualTo(Timing.OPEN);
  }

  @ParameterizedTest
  @CsvSource({"0,6,3", "-1,6,3", "14,0,0", "14,6,7", "14,6,-1"})
  void an_impossible_look_is_refused(int day, int lifted, int rooted) {
    assertThatIllegalArgumentException().isThrownBy(() -> new RootingLook(day, lifted, rooted));
  }

  @Test
  void an_impossible_share_or_window_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> RootingTime.of(LOOKS, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> RootingTime.of(LOOKS, Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new RootingWindow(24, 18));
    assertThatIllegalArgumentException().isThrownBy(() -> new RootingWindow(0, 18));
  }
}
