package trialwood.analysis.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Reference;

/**
 * The tables apply the exact binomial rule of UPOV TGP/8 and TGP/10; see the files' first lines.
 */
class AllowanceTest {

  static List<CSVRecord> ranges() {
    return Reference.records("standards/offtypes.csv");
  }

  static List<CSVRecord> errors() {
    return Reference.records("standards/offtypes_errors.csv");
  }

  @ParameterizedTest
  @MethodSource("ranges")
  void every_sample_size_of_a_range_allows_the_same_number(CSVRecord range) {
    int last = whole(range, "n_to");
    for (int n = whole(range, "n_from"); n <= last; n++) {
      assertThat(allowance(range, n).allowed()).isEqualTo(whole(range, "max_off_types"));
    }
  }

  @ParameterizedTest
  @MethodSource("ranges")
  void the_risk_of_refusing_a_sound_lot_agrees_at_both_ends(CSVRecord range) {
    for (String end : new String[] {"n_from", "n_to"}) {
      assertThat(100 * allowance(range, whole(range, end)).riskOfRefusing())
          .isCloseTo(number(range, "reject_prob_pct_at_" + end), within(0.5e-4 + 1e-9));
    }
  }

  @ParameterizedTest
  @MethodSource("errors")
  void both_error_risks_agree(CSVRecord line) {
    Allowance allowance = allowance(line, whole(line, "n"));
    assertThat(allowance.allowed()).isEqualTo(whole(line, "max_off_types"));
    assertThat(100 * allowance.riskOfRefusing())
        .isCloseTo(number(line, "type1_pct"), within(0.005 + 1e-9));
    for (int times : new int[] {2, 5, 10}) {
      assertThat(100 * allowance.riskOfPassing(times * allowance.rate()))
          .isCloseTo(number(line, "type2_pct_at_" + times + "x"), within(0.005 + 1e-9));
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.01, 0.05, 0.3, 0.9})
  void more_plants_never_allow_fewer(double rate) {
    for (int n = 2; n <= 400; n++) {
      assertThat(Allowance.of(n, rate).allowed())
          .isGreaterThanOrEqualTo(Allowance.of(n - 1, rate).allowed())
          .isLessThanOrEqualTo(n);
    }
  }

  @Test
  void twenty_plants_of_a_clone_may_hold_one_off_type() {
    // standard wording for vegetatively propagated species: UPOV TG/1/3 General Introduction
    Allowance allowance = Allowance.of(20, 0.01);
    assertThat(allowance.allowed()).isEqualTo(1);
    assertThat(allowance.allows(1)).isTrue();
    assertThat(allowance.allows(2)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"0,0.01,0.95", "20,0,0.95", "20,1,0.95", "20,NaN,0.95", "20,0.01,1"})
  void an_impossible_question_is_refused(int plants, double rate, double acceptance) {
    assertThatIllegalArgumentException().isThrownBy(() -> Allowance.of(plants, rate, acceptance));
  }

  @Test
  void more_off_types_than_plants_are_refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> Allowance.of(20, 0.01).allows(21));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Allowance.of(20, 0.01).riskOfPassing(1.1));
  }

  private static Allowance allowance(CSVRecord line, int n) {
    return Allowance.of(
        n,
        number(line, "population_standard_pct") / 100,
        number(line, "acceptance_probability_pct") / 100);
  }

  private static int whole(CSVRecord line, String column) {
    return Integer.parseInt(line.get(column));
  }

  private static double number(CSVRecord line, String column) {
    return Double.parseDouble(line.get(column));
  }
}
