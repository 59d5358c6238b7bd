package trialwood.analysis.distinct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;

class ColourDifferenceTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void a_colour_does_not_differ_from_itself_and_order_does_not_matter(int seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      Lab one = any(random);
      Lab other = any(random);
      assertThat(ColourDifference.e2000(one, one)).isZero();
      assertThat(ColourDifference.e2000(one, other))
          .isPositive()
          .isCloseTo(ColourDifference.e2000(other, one), within(1e-9));
      assertThat(ColourDifference.e76(one, other))
          .isCloseTo(ColourDifference.e76(other, one), within(1e-9));
    }
  }

  @Test
  void a_grey_has_no_hue() {
    assertThat(Lab.ofSrgb("808080").hue()).isInstanceOf(Answer.Lacking.class);
    assertThat(Lab.ofSrgb("#0000FF").hue().value().orElseThrow()).isBetween(270.0, 330.0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "FFF", "GG0000", "1234567", "##00000", "-10000"})
  void what_is_no_colour_is_refused(String hex) {
    assertThatIllegalArgumentException().isThrownBy(() -> Lab.ofSrgb(hex));
  }

  private static Lab any(Random random) {
    return new Lab(
        100 * random.nextDouble(),
        200 * random.nextDouble() - 100,
        200 * random.nextDouble() - 100);
  }
}
