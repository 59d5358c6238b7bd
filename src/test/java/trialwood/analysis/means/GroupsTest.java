package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class GroupsTest {

  private static Groups groups(String levels, double... values) {
    return Groups.of(PlotValues.of(values).by("g", Arrays.asList(levels.split(""))), "g");
  }

  @Test
  void a_level_counts_its_values_and_what_is_missing() {
    List<Groups.Summary> lines = groups("aaabc", 1, 2, Double.NaN, 5, Double.NaN).summaries();
    Groups.Summary a = lines.get(0);
    assertThat(a.n()).isEqualTo(2);
    assertThat(a.missing()).isEqualTo(1);
    assertThat(a.mean().value()).contains(1.5);
    assertThat(a.median().value()).contains(1.5);
    assertThat(lines.get(1).sd().lack()).contains("b needs two values for a spread.");
    assertThat(lines.get(2).mean().lack()).contains("c has no value.");
    assertThat(lines.get(2).median().lack()).contains("c has no value.");
    assertThatIllegalArgumentException().isThrownBy(() -> Groups.of(PlotValues.of(1), "g"));
  }

  @Test
  void spreads_of_groups_that_only_differ_in_their_mean_are_equal() {
    Groups shifted = groups("aaaabbbb", 1, 2, 3, 5, 11, 12, 13, 15);
    assertThat(EqualSpread.levene(shifted).value().orElseThrow().f()).isCloseTo(0, within(1e-12));
    assertThat(EqualSpread.brownForsythe(shifted).value().orElseThrow().p())
        .isCloseTo(1, within(1e-12));
    assertThat(EqualSpread.bartlett(shifted).value().orElseThrow().statistic())
        .isCloseTo(0, within(1e-12));
  }

  @Test
  void spreads_need_two_groups_that_vary() {
    assertThat(EqualSpread.levene(groups("aaa", 1, 2, 4)).lack()).isPresent();
    assertThat(EqualSpread.levene(groups("aabb", 1, 2, 3, 4)).lack()).isPresent();
    assertThat(EqualSpread.bartlett(groups("aaa", 1, 2, 4)).lack()).isPresent();
    assertThat(EqualSpread.bartlett(groups("aab", 1, 2, 4)).lack()).isPresent();
    assertThat(EqualSpread.bartlett(groups("aabb", 1, 1, 4, 5)).lack())
        .contains("One group does not vary at all: its logarithm does not exist.");
  }

  @Test
  void ranks_of_two_groups_apart_are_as_far_as_they_go() {
    // N = 6, rank sums 6 and 15: H = 12/42 (36/3 + 225/3) − 21 = 27/7, by hand
    KruskalWallis test = KruskalWallis.of(groups("aaabbb", 1, 2, 3, 4, 5, 6)).value().orElseThrow();
    assertThat(test.h()).isCloseTo(27.0 / 7, within(1e-12));
    assertThat(test.df()).isEqualTo(1);
  }

  @Test
  void ranks_do_not_care_for_the_scale() {
    Groups plain = groups("aabbcc", 1, 4, 4, 7, 9, 9);
    Groups cubed = groups("aabbcc", 1, 64, 64, 343, 729, 729);
    assertThat(KruskalWallis.of(plain)).isEqualTo(KruskalWallis.of(cubed));
  }

  @Test
  void ranks_need_two_groups_and_two_values() {
    assertThat(KruskalWallis.of(groups("aa", 1, 2)).lack()).isPresent();
    assertThat(KruskalWallis.of(groups("ab", 3, 3)).lack())
        .contains("All values are the same: there are no ranks.");
    assertThat(KruskalWallis.of(groups("ab", Double.NaN, 3)).lack()).isPresent();
  }
}
