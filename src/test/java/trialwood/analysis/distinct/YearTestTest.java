package trialwood.analysis.distinct;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.TwoWayTable;

/** The 2 × 1 % rule of UPOV TGP/8 Part II, and what its numbers may be. */
class YearTestTest {

  /** Student's t on 20 df at 1 %, two-tailed, printed tables, from memory: 2.845. */
  private static final YearTest CLEARLY_MORE = new YearTest(2.86 * 3, 3, 20);

  private static final YearTest NOT_CLEARLY = new YearTest(2.83 * 3, 3, 20);
  private static final YearTest CLEARLY_LESS = new YearTest(-2.86 * 3, 3, 20);

  @Test
  void a_difference_counts_in_units_of_its_error() {
    assertThat(new YearTest(2.845 * 3, 3, 20).pValue()).isCloseTo(0.01, within(1e-5));
    assertThat(CLEARLY_LESS.pValue()).isEqualTo(CLEARLY_MORE.pValue());
  }

  @Test
  void two_clear_years_in_one_direction_are_distinct() {
    assertThat(rule(CLEARLY_MORE, CLEARLY_MORE)).isTrue();
    assertThat(rule(CLEARLY_LESS, NOT_CLEARLY, CLEARLY_LESS)).isTrue();
  }

  @Test
  void one_clear_year_or_two_in_opposite_directions_are_not() {
    assertThat(rule(CLEARLY_MORE, NOT_CLEARLY, NOT_CLEARLY)).isFalse();
    assertThat(rule(CLEARLY_MORE, CLEARLY_LESS)).isFalse();
    assertThat(rule(new YearTest(0, 1, 20), new YearTest(0, 1, 20))).isFalse();
  }

  @Test
  void a_single_year_decides_nothing() {
    assertThat(YearTest.distinctInTwoYears(List.of(CLEARLY_MORE)).lack())
        .hasValue("The 2 × 1 % rule needs two years.");
  }

  @Test
  void fewer_than_20_degrees_of_freedom_are_few() {
    assertThat(new YearTest(1, 1, 19).fewDegreesOfFreedom()).isTrue();
    assertThat(new YearTest(1, 1, 20).fewDegreesOfFreedom()).isFalse();
    TwoWayTable table = twoByTwo();
    assertThat(OverYears.longTerm(table, 1, 19.9).fewDegreesOfFreedom()).isTrue();
    assertThat(OverYears.longTerm(table, 1, 20).fewDegreesOfFreedom()).isFalse();
  }

  @Test
  void a_difference_of_exactly_the_least_is_distinct() {
    OverYears years = OverYears.longTerm(twoByTwo(), 2.54, 26);
    double share = years.pValue("A", "B"); // the level at which the difference is the least one
    assertThat(years.distinct("A", "B", share * 1.001)).isTrue();
    assertThat(years.distinct("A", "B", share * 0.999)).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"NaN,1,20", "1,0,20", "1,-1,20", "1,NaN,20", "1,Infinity,20", "1,1,0"})
  void an_impossible_year_is_refused(double difference, double error, double df) {
    assertThatIllegalArgumentException().isThrownBy(() -> new YearTest(difference, error, df));
  }

  @Test
  void impossible_errors_spreads_and_colours_are_refused() {
    TwoWayTable table = twoByTwo();
    assertThatIllegalArgumentException().isThrownBy(() -> OverYears.longTerm(table, 0, 20));
    assertThatIllegalArgumentException().isThrownBy(() -> OverYears.longTerm(table, 1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new VarietyYear("C", 1, Double.NaN, 1))
        .withMessageContaining("mean of a variety");
    for (int part = 0; part < 3; part++) {
      double[] colour = {50, 1, 1};
      colour[part] = Double.NaN;
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Lab(colour[0], colour[1], colour[2]));
      assertThatIllegalArgumentException()
          .isThrownBy(() -> new Xyz(colour[0], colour[1], colour[2]));
    }
  }

  private static boolean rule(YearTest... years) {
    return YearTest.distinctInTwoYears(List.of(years)).value().orElseThrow();
  }

  private static TwoWayTable twoByTwo() {
    return TwoWayTable.of(
            List.of(
                new TwoWayTable.Cell("A", "1", 10),
                new TwoWayTable.Cell("A", "2", 12),
                new TwoWayTable.Cell("B", "1", 8),
                new TwoWayTable.Cell("B", "2", 9)))
        .value()
        .orElseThrow();
  }
}
