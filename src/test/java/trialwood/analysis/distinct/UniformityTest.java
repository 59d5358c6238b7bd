package trialwood.analysis.distinct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.Answer;

/**
 * The worked example of UPOV TGP/8 Part II (ryegrass). Means and standard deviations are from
 * memory; the limits were computed apart from this code.
 */
class UniformityTest {

  private static final double[][] MEANS = {
    {38, 63, 69, 71, 69, 74, 76, 75, 78, 79, 76},
    {41, 68, 71, 75, 78, 77, 79, 80, 81, 80, 85},
    {35, 61, 64, 67, 69, 71, 70, 73, 75, 75, 79}
  };
  private static final double[][] SDS = {
    {8.5, 8.1, 9.9, 10.2, 11.2, 9.8, 10.7, 10.9, 11.6, 9.4, 9.2},
    {8.8, 7.6, 7.6, 6.6, 7.5, 5.4, 7.6, 4.1, 7.4, 7.6, 4.8},
    {9.4, 6.7, 5.9, 6.5, 5.9, 7.4, 4.8, 5.7, 9.1, 8.5, 7.4}
  };
  private static final List<VarietyYear> CANDIDATE =
      List.of(
          new VarietyYear("C1", 1, 52, 8.2),
          new VarietyYear("C1", 2, 56, 8.4),
          new VarietyYear("C1", 3, 48, 8.1));

  @Test
  void the_candidate_is_uniform() {
    Uniformity uniformity = Uniformity.of(CANDIDATE, references()).value().orElseThrow();
    assertThat(uniformity.candidateMean()).isCloseTo(2.1458, within(5e-5));
    assertThat(uniformity.referenceMean()).isCloseTo(2.1562, within(5e-5));
    assertThat(uniformity.variance()).isCloseTo(0.01514, within(5e-6));
    assertThat(uniformity.df()).isEqualTo(30);
    assertThat(uniformity.uniform(0.001)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    "0.05, 2.2822",
    "0.02, 2.3155",
    "0.01, 2.3386",
    "0.005, 2.3603",
    "0.002, 2.3876",
    "0.001, 2.4074"
  })
  void the_limit_is_met(double level, double wanted) {
    Uniformity uniformity = Uniformity.of(CANDIDATE, references()).value().orElseThrow();
    assertThat(uniformity.limit(level)).isCloseTo(wanted, within(5e-5));
  }

  @Test
  void a_candidate_twice_as_uneven_is_not_uniform() {
    List<VarietyYear> uneven =
        CANDIDATE.stream()
            .map(line -> new VarietyYear("C2", line.year(), line.mean(), 2 * line.sd()))
            .toList();
    assertThat(Uniformity.of(uneven, references()).value().orElseThrow().uniform(0.001)).isFalse();
  }

  @Test
  void beyond_the_references_the_trend_is_flat() {
    List<VarietyYear> far = List.of(new VarietyYear("C", 1, 500, 9.2));
    List<VarietyYear> near = List.of(new VarietyYear("C", 1, 79, 9.2));
    List<VarietyYear> year = references().stream().filter(line -> line.year() == 1).toList();
    assertThat(Uniformity.of(far, year)).isEqualTo(Uniformity.of(near, year));
  }

  @Test
  void a_missing_year_is_an_answer() {
    assertThat(Uniformity.of(CANDIDATE.subList(0, 2), references()))
        .isInstanceOf(Answer.Lacking.class);
    assertThat(Uniformity.of(CANDIDATE, references().subList(1, 33)))
        .isInstanceOf(Answer.Lacking.class);
    assertThat(Uniformity.of(List.of(), List.of())).isInstanceOf(Answer.Lacking.class);
    List<VarietyYear> otherYear = new ArrayList<>(CANDIDATE.subList(0, 2));
    otherYear.add(new VarietyYear("C1", 9, 48, 8.1));
    assertThat(Uniformity.of(otherYear, references()).lack())
        .hasValue("The candidate must be measured once in every year of its references.");
  }

  @Test
  void a_limit_has_a_level_inside_0_and_1() {
    Uniformity uniformity = Uniformity.of(CANDIDATE, references()).value().orElseThrow();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> uniformity.limit(1))
        .withMessageContaining("level of a test");
  }

  @Test
  void a_negative_spread_is_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new VarietyYear("C", 1, 50, -1));
  }

  private static List<VarietyYear> references() {
    var lines = new ArrayList<VarietyYear>();
    for (int j = 0; j < MEANS.length; j++) {
      for (int i = 0; i < MEANS[j].length; i++) {
        lines.add(new VarietyYear("R" + (i + 1), j + 1, MEANS[j][i], SDS[j][i]));
      }
    }
    return lines;
  }
}
