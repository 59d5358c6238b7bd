package trialwood.analysis.means;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;

class LinearModelTest {

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void sums_of_squares_add_up_and_residuals_are_free_of_blocks_and_entries(long seed) {
    Layouts layout = Layouts.seeded(seed);
    double[] values = layout.values();
    LinearModel model = Layouts.known(LinearModel.inBlocks(layout.plots(values), "block", "entry"));
    AnovaTable table = model.sequential();
    double[] recorded = Arrays.stream(values).filter(v -> !Double.isNaN(v)).toArray();
    double mean = Arrays.stream(recorded).average().orElseThrow();
    double total = Arrays.stream(recorded).map(v -> (v - mean) * (v - mean)).sum();
    double parts = table.lines().stream().mapToDouble(AnovaTable.Line::ss).sum();
    assertThat(parts + table.residualSs()).isCloseTo(total, within(1e-9 * total));
    assertThat(model.totalSs()).isCloseTo(total, within(1e-9 * total));
    int df = table.lines().stream().mapToInt(AnovaTable.Line::df).sum();
    assertThat(df + table.residualDf()).isEqualTo(recorded.length - 1);
    assertThat(model.missing()).isEqualTo(values.length - recorded.length);

    double[] residuals = model.residuals();
    assertThat(Arrays.stream(residuals).map(r -> r * r).sum())
        .isCloseTo(table.residualSs(), within(1e-9 * total));
    PlotValues plots = layout.plots(values).recorded();
    for (String factor : List.of("block", "entry")) {
      for (String level : Factor.of(plots, factor).levels()) {
        double sum = 0;
        for (int i = 0; i < residuals.length; i++) {
          sum += plots.levelsOf(factor).get(i).equals(level) ? residuals[i] : 0;
        }
        assertThat(sum).isCloseTo(0, within(1e-9));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13, 14, 15, 16})
  void other_names_for_the_entries_change_nothing(long seed) {
    Layouts layout = Layouts.seeded(seed);
    double[] values = layout.values();
    List<String> names = layout.entryOfPlot();
    List<String> others = names.stream().map(name -> "z" + (99 - name.charAt(1))).toList();
    LinearModel model = Layouts.known(LinearModel.inBlocks(layout.plots(values), "block", "entry"));
    LinearModel renamed =
        Layouts.known(
            LinearModel.inBlocks(
                PlotValues.of(values).by("block", layout.blockOfPlot()).by("entry", others),
                "block",
                "entry"));
    assertThat(renamed.adjusted().line("entry").ss())
        .isCloseTo(model.adjusted().line("entry").ss(), within(1e-9));
    for (int i = 0; i < layout.entries(); i++) {
      StudentBelief mean = model.means("entry").of(names.get(i)).value().orElseThrow();
      StudentBelief other = renamed.means("entry").of(others.get(i)).value().orElseThrow();
      assertThat(other.estimate()).isCloseTo(mean.estimate(), within(1e-10));
      assertThat(other.standardError()).isCloseTo(mean.standardError(), within(1e-10));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {21, 22, 23, 24, 25, 26})
  void a_richer_block_changes_no_difference_between_entries(long seed) {
    Layouts layout = Layouts.seeded(seed);
    double[] values = layout.values();
    double[] richer = values.clone();
    for (int i = 0; i < richer.length; i++) {
      richer[i] += layout.blockOfPlot().get(i).equals("B1") ? 1000 : 0;
    }
    LinearModel plain = Layouts.known(LinearModel.inBlocks(layout.plots(values), "block", "entry"));
    LinearModel rich = Layouts.known(LinearModel.inBlocks(layout.plots(richer), "block", "entry"));
    assertThat(rich.residualSd()).isCloseTo(plain.residualSd(), within(1e-9));
    for (int i = 1; i < layout.entries(); i++) {
      StudentBelief before = plain.means("entry").difference("E" + i, "E0").value().orElseThrow();
      StudentBelief after = rich.means("entry").difference("E" + i, "E0").value().orElseThrow();
      assertThat(after.estimate()).isCloseTo(before.estimate(), within(1e-9));
      assertThat(after.standardError()).isCloseTo(before.standardError(), within(1e-9));
    }
  }

  @Test
  void in_complete_blocks_adjusted_means_are_plain_means_and_all_types_agree() {
    double[] values = {5, 7, 9, 6, 8, 13, 4, 9, 10, 7, 7, 11};
    PlotValues plots = new Layouts(new java.util.SplittableRandom(1), 3, 4).plots(values);
    LinearModel model = Layouts.known(LinearModel.inBlocks(plots, "block", "entry"));
    assertThat(model.means("entry").of("E0").value().orElseThrow().estimate())
        .isCloseTo(5.5, within(1e-12));
    double ss = model.sequential().line("entry").ss();
    assertThat(model.adjusted().line("entry").ss()).isCloseTo(ss, within(1e-12));
    assertThat(model.averagesOfCells().value().orElseThrow().line("entry").ss())
        .isCloseTo(ss, within(1e-12));
    assertThat(model.confounded()).isEmpty();
  }

  @Test
  void a_value_that_counts_twice_is_a_weight_of_two() {
    LinearModel twice =
        Layouts.known(
            LinearModel.oneWay(
                PlotValues.of(3, 3, 5, 8, 9).by("g", List.of("a", "a", "a", "b", "b")), "g"));
    LinearModel weighted =
        Layouts.known(
            LinearModel.oneWay(
                PlotValues.of(3, 5, 8, 9).by("g", List.of("a", "a", "b", "b")).weighing(2, 1, 1, 1),
                "g"));
    assertThat(weighted.means("g").of("a").value().orElseThrow().estimate())
        .isCloseTo(twice.means("g").of("a").value().orElseThrow().estimate(), within(1e-12));
    assertThat(weighted.sequential().residualSs())
        .isCloseTo(twice.sequential().residualSs(), within(1e-12));
  }

  @Test
  void an_entry_that_stands_in_one_block_alone_is_confounded_with_it() {
    PlotValues plots =
        PlotValues.of(4, 5, 6, 7, 8, 9)
            .by("block", List.of("1", "1", "2", "2", "3", "3"))
            .by("soil", List.of("loam", "loam", "sand", "sand", "sand", "sand"));
    LinearModel model = Layouts.known(LinearModel.of(plots, "block", "soil"));
    assertThat(model.sequential().lines())
        .extracting(AnovaTable.Line::term)
        .containsExactly("block");
    assertThat(model.confounded())
        .singleElement()
        .extracting(Confounded::sentence)
        .isEqualTo("soil cannot be told from block and is left out.");
  }

  @Test
  void a_missing_combination_has_no_mean_and_the_others_keep_theirs() {
    PlotValues plots =
        PlotValues.of(4, 5, 6, 8, 8, 9)
            .by("site", List.of("A", "A", "B", "B", "A", "A"))
            .by("entry", List.of("x", "x", "x", "x", "y", "y"));
    LinearModel model = Layouts.known(LinearModel.twoWay(plots, "site", "entry"));
    AdjustedMeans cells = model.means("site", "entry");
    assertThat(cells.of("A:y").value().orElseThrow().estimate()).isCloseTo(8.5, within(1e-12));
    assertThat(cells.of("B:y").lack())
        .contains("The mean of B:y cannot be estimated: some combinations have no value.");
    assertThat(model.means("entry").of("y").value()).isEmpty();
    assertThat(model.means("entry").of("x").value().orElseThrow().estimate())
        .isCloseTo(5.75, within(1e-12));
    assertThat(model.averagesOfCells().lack()).isPresent();
    assertThat(cells.pairs().lacking()).hasSize(3);
  }

  @Test
  void groups_of_entries_that_share_no_block_are_compared_only_among_themselves() {
    PlotValues plots =
        PlotValues.of(4, 6, 5, 6, 9, 12, 10, 11)
            .by("block", List.of("1", "1", "2", "2", "3", "3", "4", "4"))
            .by("entry", List.of("a", "b", "a", "b", "c", "d", "c", "d"));
    AdjustedMeans means =
        Layouts.known(LinearModel.inBlocks(plots, "block", "entry")).means("entry");
    assertThat(means.difference("b", "a").value().orElseThrow().estimate())
        .isCloseTo(1.5, within(1e-12));
    assertThat(means.difference("c", "a").value()).isEmpty();
    assertThat(means.of("a").value()).isEmpty();
  }

  @Test
  void too_little_is_an_answer() {
    assertThat(lack(of(Double.NaN, Double.NaN), "a", "b")).isEqualTo("No plot has a value.");
    assertThat(lack(of(3, 4), "a", "a")).isEqualTo("All plots are alike in g.");
    assertThat(lack(of(3, 4), "a", "b")).startsWith("2 values leave nothing to judge the error");
    assertThat(lack(of(3, 3, 3, 3), "a", "a", "b", "b")).contains("do not vary");
    assertThat(lack(of(0.1, 0.1, 7.3, 7.3), "a", "a", "b", "b")).contains("do not vary");
    assertThat(lack(of(0, 0, 0, 0), "a", "a", "b", "b")).contains("do not vary");
    assertThat(lack(of(), new String[0])).isEqualTo("No plot has a value.");
  }

  @Test
  void what_does_not_fit_is_refused() {
    PlotValues plots = of(1, 2, 4).by("g", List.of("a", "a", "b"));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(1, 2).by("g", List.of("a")))
        .withMessage("1 levels of g do not fit 2 values.");
    assertThatIllegalArgumentException().isThrownBy(() -> of(1).by("g", List.of(" ")));
    assertThatIllegalArgumentException().isThrownBy(() -> plots.by("g", List.of("a", "b", "c")));
    assertThatIllegalArgumentException().isThrownBy(() -> of(Double.POSITIVE_INFINITY));
    assertThatIllegalArgumentException().isThrownBy(() -> plots.weighing(1, 1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> plots.weighing(1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> LinearModel.oneWay(plots, "h"))
        .withMessage("The plots have no h.");
    assertThatIllegalArgumentException().isThrownBy(() -> LinearModel.of(plots));
    assertThatIllegalArgumentException().isThrownBy(() -> LinearModel.of(plots, "g:g"));
    LinearModel model = Layouts.known(LinearModel.oneWay(plots, "g"));
    assertThatIllegalArgumentException().isThrownBy(() -> model.means("h"));
    assertThatIllegalArgumentException().isThrownBy(() -> model.means("g").of("c"));
    assertThatIllegalArgumentException().isThrownBy(() -> model.sequential().line("h"));
  }

  @Test
  void a_mean_of_nothing_or_less_has_no_coefficient_of_variation() {
    LinearModel model =
        Layouts.known(
            LinearModel.oneWay(of(-1, 1, -2, 2).by("g", List.of("a", "a", "b", "b")), "g"));
    assertThat(model.cvPercent().lack())
        .contains("A coefficient of variation needs a mean above 0.");
  }

  private static PlotValues of(double... values) {
    return PlotValues.of(values);
  }

  private static String lack(PlotValues plots, String... groups) {
    Answer<LinearModel> model = LinearModel.oneWay(plots.by("g", List.of(groups)), "g");
    return model.lack().orElseThrow();
  }
}
