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
import trialwood.analysis.TwoWayTable;

/**
 * The worked example of UPOV TGP/8 Part II (ryegrass, days to ear emergence, three years). Its data
 * and its published results, mean squares 174.93, 452.59 and 2.54, t 2.779 and LSD 3.6, are from
 * memory; the further digits were computed apart from this code.
 */
class OverYearsTest {

  private static final double[][] RYEGRASS = {
    {38, 41, 35}, {63, 68, 61}, {69, 71, 64}, {71, 75, 67}, {69, 78, 69}, {74, 77, 71},
    {76, 79, 70}, {75, 80, 73}, {78, 81, 75}, {79, 80, 75}, {76, 85, 79}, {52, 56, 48},
    {72, 79, 68}, {85, 88, 85}
  };

  @Test
  void the_published_analysis_of_variance_is_met() {
    TwoWayTable table = table(RYEGRASS);
    assertThat(table.columnSquares() / 2).isCloseTo(174.9286, within(5e-5));
    assertThat(table.rowSquares() / 13).isCloseTo(452.5879, within(5e-5));
    assertThat(criterion(table).meanSquare()).isCloseTo(2.543956, within(5e-7));
    assertThat(criterion(table).df()).isEqualTo(26);
    assertThat(criterion(table).fewDegreesOfFreedom()).isFalse();
  }

  @ParameterizedTest
  @CsvSource({"0.05, 2.676904", "0.02, 3.227906", "0.01, 3.618704", "0.001, 4.827099"})
  void the_least_difference_is_met(double level, double wanted) {
    assertThat(criterion(table(RYEGRASS)).leastDifference(level)).isCloseTo(wanted, within(1e-6));
  }

  @Test
  void the_years_neither_stretch_nor_shrink_the_differences() {
    TwoWayTable table = table(RYEGRASS);
    YearSlopes slopes = YearSlopes.of(table).value().orElseThrow();
    assertThat(slopes.slopes().get(0)).isCloseTo(0.9739, within(5e-5));
    assertThat(slopes.slopes().get(1)).isCloseTo(0.9975, within(5e-5));
    assertThat(slopes.slopes().get(2)).isCloseTo(1.0286, within(5e-5));
    assertThat(slopes.slopeMeanSquare()).isCloseTo(1.474568, within(5e-7));
    assertThat(slopes.remainder()).isCloseTo(2.633072, within(5e-7));
    assertThat(slopes.remainderDf()).isEqualTo(24);
    assertThat(slopes.f()).isCloseTo(0.5600, within(5e-5));
    assertThat(slopes.pValue()).isCloseTo(0.578, within(5e-4));
    assertThat(slopes.criterion(0.01)).isEqualTo(OverYears.of(table));
  }

  @Test
  void a_year_that_stretches_the_differences_is_taken_out_of_the_error() {
    TwoWayTable table =
        table(
            new double[][] {{10, 20, 41}, {12, 25, 50}, {14, 29, 61}, {16, 36, 70}, {18, 40, 81}});
    OverYears adjusted =
        YearSlopes.of(table).value().orElseThrow().criterion(0.01).value().orElseThrow();
    assertThat(adjusted.meanSquare()).isLessThan(criterion(table).meanSquare());
    assertThat(adjusted.df()).isEqualTo(6);
  }

  @Test
  void a_difference_just_as_large_as_the_least_is_distinct_and_its_probability_is_the_level() {
    OverYears years = criterion(table(RYEGRASS));
    TwoWayTable pair = table(new double[][] {{0, 0, 0}, {1, 1, 1}});
    double least = years.leastDifference(0.01);
    OverYears scaled = OverYears.longTerm(pair, years.meanSquare() / (least * least), 26);
    assertThat(scaled.pValue("V1", "V2")).isCloseTo(0.01, within(1e-9));
  }

  @Test
  void two_varieties_in_two_years_ask_for_the_long_term_form() {
    TwoWayTable table = table(new double[][] {{10, 12}, {13, 18}});
    assertThat(criterion(table).fewDegreesOfFreedom()).isTrue();
    OverYears longTerm = OverYears.longTerm(table, 1.5, 40);
    assertThat(longTerm.fewDegreesOfFreedom()).isFalse();
    assertThat(longTerm.leastDifference(0.01)).isLessThan(criterion(table).leastDifference(0.01));
  }

  @Test
  void differences_that_never_change_leave_no_error() {
    TwoWayTable table = table(new double[][] {{1, 2, 3}, {2, 3, 4}, {5, 6, 7}});
    assertThat(OverYears.of(table)).isInstanceOf(Answer.Lacking.class);
    assertThat(YearSlopes.of(table)).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void an_impossible_question_is_refused() {
    OverYears years = criterion(table(RYEGRASS));
    assertThatIllegalArgumentException().isThrownBy(() -> years.leastDifference(0));
    assertThatIllegalArgumentException().isThrownBy(() -> years.difference("V1", "nobody"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> OverYears.longTerm(years.table(), -1, 20));
  }

  @Test
  void two_years_at_one_per_cent_must_point_the_same_way() {
    YearTest up = new YearTest(4, 1, 30);
    YearTest down = new YearTest(-4, 1, 30);
    YearTest small = new YearTest(1, 1, 30);
    assertThat(YearTest.distinctInTwoYears(List.of(up, small, up)).value()).contains(true);
    assertThat(YearTest.distinctInTwoYears(List.of(up, small, down)).value()).contains(false);
    assertThat(YearTest.distinctInTwoYears(List.of(up, small, small)).value()).contains(false);
    assertThat(YearTest.distinctInTwoYears(List.of(up))).isInstanceOf(Answer.Lacking.class);
    assertThat(new YearTest(4, 1, 12).fewDegreesOfFreedom()).isTrue();
  }

  @Test
  void notes_are_compared_by_the_kind_of_expression() {
    assertThat(Expression.QL.compare(1, 9)).isEqualTo(Expression.Verdict.CLEAR);
    assertThat(Expression.QN.compare(3, 5)).isEqualTo(Expression.Verdict.CLEAR);
    assertThat(Expression.QN.compare(3, 4)).isEqualTo(Expression.Verdict.A_PERSON_DECIDES);
    assertThat(Expression.PQ.compare(1, 4)).isEqualTo(Expression.Verdict.A_PERSON_DECIDES);
    assertThat(Expression.PQ.compare(2, 2)).isEqualTo(Expression.Verdict.NOT_CLEAR);
  }

  private static OverYears criterion(TwoWayTable table) {
    return OverYears.of(table).value().orElseThrow();
  }

  private static TwoWayTable table(double[][] means) {
    var cells = new ArrayList<TwoWayTable.Cell>();
    for (int i = 0; i < means.length; i++) {
      for (int j = 0; j < means[i].length; j++) {
        cells.add(new TwoWayTable.Cell("V" + (i + 1), "year " + (j + 1), means[i][j]));
      }
    }
    return TwoWayTable.of(cells).value().orElseThrow();
  }
}
