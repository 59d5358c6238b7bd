package trialwood.analysis.stability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;
import trialwood.analysis.TwoWayTable;
import trialwood.analysis.trial.Better;

class StabilityTest {

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void the_parts_of_a_table_add_up(int seed) {
    TwoWayTable table = any(seed);
    int entries = table.rows().size();
    double total = 0;
    for (int i = 0; i < entries; i++) {
      for (double value : table.row(i)) {
        total += (value - table.grandMean()) * (value - table.grandMean());
      }
    }
    assertThat(table.rowSquares() + table.columnSquares() + table.interactionSquares())
        .isCloseTo(total, within(1e-9 * total));

    JointRegression lines = JointRegression.of(table).value().orElseThrow();
    assertThat(lines.slopeSquares() + lines.deviationSquares())
        .isCloseTo(table.interactionSquares(), within(1e-9 * total));
    assertThat(lines.lines().stream().mapToDouble(StabilityLine::slope).average().orElseThrow())
        .isCloseTo(1, within(1e-9));
    assertThat(lines.lines().stream().mapToDouble(line -> line.line().residualSquares()).sum())
        .isCloseTo(lines.deviationSquares(), within(1e-9 * total));

    List<EntryStability> measures = EntryStability.of(table, Better.HIGHER).value().orElseThrow();
    assertThat(measures.stream().mapToDouble(EntryStability::ecovalence).sum())
        .isCloseTo(table.interactionSquares(), within(1e-9 * total));
    assertThat(
            measures.stream()
                .mapToDouble(EntryStability::stabilityVariance)
                .average()
                .orElseThrow())
        .isCloseTo(table.interactionSquares() / table.interactionDf(), within(1e-9 * total));
    assertThat(measures.stream().mapToDouble(EntryStability::rankSum).sum())
        .isEqualTo(entries * (entries + 1.0));

    Ammi ammi = Ammi.of(table, 1).value().orElseThrow();
    assertThat(ammi.axes().stream().mapToDouble(Ammi.Axis::share).sum()).isCloseTo(1, within(1e-9));
    assertThat(ammi.axes().stream().mapToInt(Ammi.Axis::df).sum()).isEqualTo(table.interactionDf());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void the_scores_of_all_axes_give_the_interaction_back(int seed) {
    TwoWayTable table = any(seed);
    Ammi ammi = Ammi.of(table, 1).value().orElseThrow();
    for (int i = 0; i < table.rows().size(); i++) {
      for (int j = 0; j < table.columns().size(); j++) {
        double sum = 0;
        for (int k = 0; k < ammi.axes().size(); k++) {
          sum +=
              ammi.entryScore(table.rows().get(i), k)
                  * ammi.environmentScore(table.columns().get(j), k);
        }
        assertThat(sum).isCloseTo(table.interaction(i, j), within(1e-9));
      }
    }
  }

  @Test
  void several_plots_of_a_cell_are_averaged() {
    TwoWayTable table =
        TwoWayTable.of(
                List.of(
                    new TwoWayTable.Cell("A", "north", 1),
                    new TwoWayTable.Cell("A", "north", 3),
                    new TwoWayTable.Cell("A", "south", 4),
                    new TwoWayTable.Cell("B", "north", 5),
                    new TwoWayTable.Cell("B", "south", 6)))
            .value()
            .orElseThrow();
    assertThat(table.at(0, 0)).isEqualTo(2);
    assertThat(table.rowMean(table.rowOf("B"))).isEqualTo(5.5);
  }

  @Test
  void a_missing_cell_is_named() {
    Answer<TwoWayTable> table =
        TwoWayTable.of(
            List.of(
                new TwoWayTable.Cell("A", "north", 1),
                new TwoWayTable.Cell("A", "south", 4),
                new TwoWayTable.Cell("B", "north", 5)));
    assertThat(table.lack()).contains("No value of B in south.");
    assertThat(TwoWayTable.of(List.of())).isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void entries_that_never_change_places_have_no_axes_and_no_deviation() {
    TwoWayTable table = table(new double[][] {{0.1, 0.2, 0.7}, {1.1, 1.2, 1.7}, {5.1, 5.2, 5.7}});
    assertThat(Ammi.of(table, 1)).isInstanceOf(Answer.Lacking.class);
    JointRegression lines = JointRegression.of(table).value().orElseThrow();
    assertThat(lines.f()).isInstanceOf(Answer.Lacking.class);
    assertThat(lines.pValue()).isInstanceOf(Answer.Lacking.class);
    assertThat(lines.of("E1").chanceSlopeIsOne()).isInstanceOf(Answer.Lacking.class);
    assertThat(lines.of("E1").slope()).isCloseTo(1, within(1e-12));
  }

  @Test
  void places_that_are_all_alike_show_no_slope() {
    TwoWayTable table = table(new double[][] {{1, 2, 3}, {3, 2, 1}});
    assertThat(JointRegression.of(table)).isInstanceOf(Answer.Lacking.class);
    assertThat(JointRegression.of(table(new double[][] {{1, 2}, {3, 5}})))
        .isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void two_entries_have_a_single_axis_and_no_stability_variance() {
    TwoWayTable table = table(new double[][] {{1, 2, 5}, {3, 2, 1}});
    assertThat(EntryStability.of(table, Better.HIGHER)).isInstanceOf(Answer.Lacking.class);
    Ammi ammi = Ammi.of(table, 1).value().orElseThrow();
    assertThat(ammi.axes()).hasSize(1);
    assertThat(ammi.stabilityValue("E1")).isInstanceOf(Answer.Lacking.class);
    assertThat(ammi.distance("E1", "E2")).isPositive();
  }

  @Test
  void where_less_is_better_the_best_is_the_least() {
    TwoWayTable table = table(new double[][] {{1, 2, 1}, {3, 4, 4}, {5, 9, 7}});
    EntryStability first = EntryStability.of(table, Better.LOWER).value().orElseThrow().get(0);
    assertThat(first.superiority()).isZero();
    assertThat(first.placeByMean()).isEqualTo(1);
  }

  @Test
  void the_environmental_variance_is_that_of_the_entrys_own_means() {
    TwoWayTable table = table(new double[][] {{1, 5, 3}, {2, 2, 5}, {0, 0, 1}});
    List<EntryStability> measures = EntryStability.of(table, Better.HIGHER).value().orElseThrow();
    assertThat(measures.get(0).environmentalVariance()).isEqualTo(4); // (4 + 4 + 0) ÷ 2
    assertThat(measures.get(1).environmentalVariance()).isEqualTo(3); // (1 + 1 + 4) ÷ 2
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4})
  void the_first_axis_is_the_strongest_and_weighs_in_the_stability_value(int seed) {
    Ammi ammi = Ammi.of(any(seed), 1).value().orElseThrow();
    List<Ammi.Axis> axes = ammi.axes();
    for (int k = 1; k < axes.size(); k++) {
      assertThat(axes.get(k).singularValue()).isLessThanOrEqualTo(axes.get(k - 1).singularValue());
    }
    double weight = axes.get(0).squares() / axes.get(1).squares();
    double first = weight * ammi.entryScore("E1", 0);
    double second = ammi.entryScore("E1", 1);
    assertThat(ammi.stabilityValue("E1").value().orElseThrow())
        .isCloseTo(Math.sqrt(first * first + second * second), within(1e-9));
  }

  @Test
  void equal_means_share_their_place() {
    TwoWayTable table = table(new double[][] {{1, 5, 3}, {5, 1, 3}, {0, 0, 1}});
    List<EntryStability> measures = EntryStability.of(table, Better.HIGHER).value().orElseThrow();
    assertThat(measures.get(0).placeByMean()).isEqualTo(1.5);
    assertThat(measures.get(1).placeByMean()).isEqualTo(1.5);
    assertThat(measures.get(2).placeByMean()).isEqualTo(3);
  }

  @Test
  void impossible_input_is_refused() {
    TwoWayTable table = any(1);
    assertThatIllegalArgumentException().isThrownBy(() -> Ammi.of(table, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new TwoWayTable.Cell("A", "north", Double.NaN));
    JointRegression lines = JointRegression.of(table).value().orElseThrow();
    assertThatIllegalArgumentException().isThrownBy(() -> lines.of("nobody"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> lines.lines().get(0).deviationBeyondError(-1, 3));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> lines.lines().get(0).deviationBeyondError(1, 0.5));
    assertThat(lines.lines().get(0).deviationBeyondError(0, 1))
        .isEqualTo(lines.lines().get(0).deviation());
    Ammi ammi = Ammi.of(table, 1).value().orElseThrow();
    assertThatIllegalArgumentException().isThrownBy(() -> ammi.axes().get(0).f(0));
    assertThatIllegalArgumentException().isThrownBy(() -> ammi.axes().get(0).pValue(1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ammi.environmentScore("nowhere", 0))
        .withMessage("nowhere is not in the table.");
  }

  private static TwoWayTable any(int seed) {
    Random random = new Random(seed);
    double[][] means = new double[3 + random.nextInt(8)][3 + random.nextInt(8)];
    for (double[] row : means) {
      for (int j = 0; j < row.length; j++) {
        row[j] = 50 + 5 * j + 10 * random.nextGaussian();
      }
    }
    return table(means);
  }

  private static TwoWayTable table(double[][] means) {
    var cells = new ArrayList<TwoWayTable.Cell>();
    for (int i = 0; i < means.length; i++) {
      for (int j = 0; j < means[i].length; j++) {
        cells.add(new TwoWayTable.Cell("E" + (i + 1), "P" + (j + 1), means[i][j]));
      }
    }
    return TwoWayTable.of(cells).value().orElseThrow();
  }
}
