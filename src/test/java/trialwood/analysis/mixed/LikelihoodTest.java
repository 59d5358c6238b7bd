package trialwood.analysis.mixed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The restricted likelihood in blocks and borders against the same in full matrices. */
class LikelihoodTest {

  /** A design and the variances it is looked at with, in the order of its layout. */
  record Case(String name, Field field, List<Factor> fixed, List<Factor> random, long seed) {

    FixedPart columns() {
      return FixedPart.of(fixed, field.values().length);
    }

    Layout layout() {
      return Layout.of(field.values(), columns(), random);
    }

    List<Factor> terms(Layout layout) {
      return Stream.concat(layout.owned().stream(), layout.crossing().stream()).toList();
    }

    double[] variances() {
      var draw = new SplittableRandom(seed);
      return draw.doubles(random.size() + 1, 0.05, 8).toArray();
    }

    DenseModel dense(double[] variances) {
      return new DenseModel(field.values(), columns(), terms(layout()), variances);
    }

    @Override
    public String toString() {
      return name + " " + seed;
    }
  }

  static Stream<Case> cases() {
    return Stream.of(1L, 2L, 3L, 4L).flatMap(LikelihoodTest::designs);
  }

  private static Stream<Case> designs(long seed) {
    Field field = Field.drawn(new SplittableRandom(seed), 6, 3, 2, 2, 0.15 * (seed % 3));
    Factor entry = field.entry();
    Factor site = field.site();
    Factor place = field.place();
    Factor block = field.block();
    Factor cell = field.entryAtSite();
    return Stream.of(
        new Case("no random term", field, List.of(entry), List.of(), seed),
        new Case("one term", field, List.of(), List.of(entry), seed),
        new Case("nested", field, List.of(), List.of(site, place, block), seed),
        new Case("crossed", field, List.of(), List.of(entry, place), seed),
        new Case("crossed and nested", field, List.of(), List.of(entry, cell, site, place), seed),
        new Case("fixed entries", field, List.of(entry), List.of(cell, place, block), seed),
        new Case("fixed sites", field, List.of(site), List.of(entry, cell, block), seed),
        new Case("two fixed factors", field, List.of(entry, place), List.of(block, cell), seed),
        new Case("a confounded factor", field, List.of(place, site), List.of(entry), seed));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_criterion_is_that_of_the_full_matrices(Case design) {
    double[] variances = design.variances();
    var at = new Evaluation(design.layout(), variances);
    assertThat(at.criterion()).isCloseTo(design.dense(variances).criterion(), near(at.criterion()));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void a_variance_of_0_is_as_if_its_term_were_not_there(Case design) {
    double[] variances = design.variances();
    for (int term = 0; term < variances.length - 1; term++) {
      double[] without = variances.clone();
      without[term] = 0;
      double wanted = design.dense(without).criterion();
      assertThat(new Evaluation(design.layout(), without).criterion())
          .isCloseTo(wanted, near(wanted));
      assertThat(new Slope(new Evaluation(design.layout(), without)).gradient()[term])
          .isCloseTo(design.dense(without).derivative(term), within(1e-7));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_slope_is_that_of_the_full_matrices_and_of_a_small_step(Case design) {
    double[] variances = design.variances();
    DenseModel dense = design.dense(variances);
    double[] gradient = new Slope(new Evaluation(design.layout(), variances)).gradient();
    for (int term = 0; term < variances.length; term++) {
      assertThat(gradient[term]).isCloseTo(dense.derivative(term), within(1e-8));
      assertThat(gradient[term])
          .isCloseTo(
              bySteps(design, variances, term), within(1e-6 * (10 + Math.abs(gradient[term]))));
    }
  }

  @ParameterizedTest
  @MethodSource("cases")
  void the_average_information_is_that_of_the_full_matrices(Case design) {
    double[] variances = design.variances();
    DenseModel dense = design.dense(variances);
    var slope = new Slope(new Evaluation(design.layout(), variances));
    for (int k = 0; k < variances.length; k++) {
      for (int l = 0; l < variances.length; l++) {
        double wanted = dense.averageInformation(k, l);
        assertThat(slope.averageInformation().get(k, l)).isCloseTo(wanted, near(wanted));
      }
    }
  }

  private static double bySteps(Case design, double[] variances, int term) {
    double step = 1e-4 * variances[term];
    double[] up = variances.clone();
    double[] down = variances.clone();
    up[term] += step;
    down[term] -= step;
    Layout layout = design.layout();
    return (new Evaluation(layout, up).criterion() - new Evaluation(layout, down).criterion())
        / (2 * step);
  }

  private static Offset<Double> near(double value) {
    return within(1e-9 * (1 + Math.abs(value)));
  }
}
