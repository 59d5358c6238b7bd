package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * Least squares of plot values on factors and their combinations: y = mean + terms + residual, the
 * residuals of all plots independent with one variance (divided by the plot's weight).
 *
 * <p>Plots without a value are left out and counted. What the layout cannot separate is left to the
 * earlier term and named.
 *
 * <p>Source: Searle, S. R. (1971) Linear Models, chapters 5 to 8
 */
public final class LinearModel {

  private final PlotValues plots;
  private final int missing;
  private final Design design;
  private final LeastSquares fit;

  private LinearModel(PlotValues plots, int missing, Design design, LeastSquares fit) {
    this.plots = plots;
    this.missing = missing;
    this.design = design;
    this.fit = fit;
  }

  /** Groups without blocks: y = mean + group. */
  public static Answer<LinearModel> oneWay(PlotValues plots, String group) {
    return of(plots, group);
  }

  /** Blocks, complete or not: y = mean + block + entry. */
  public static Answer<LinearModel> inBlocks(PlotValues plots, String block, String entry) {
    return of(plots, block, entry);
  }

  /** Two factors that may act on each other: y = mean + a + b + a:b. */
  public static Answer<LinearModel> twoWay(PlotValues plots, String a, String b) {
    return of(plots, a, b, a + ":" + b);
  }

  /**
   * Fits the terms in their order. Lacking if no plot has a value, if all plots are alike in every
   * factor, if no residual degree of freedom is left, or if the residuals are all nothing.
   *
   * @param terms factors, or combinations such as {@code site:entry}; at least one
   * @throws IllegalArgumentException if a term names an unknown factor or one twice
   */
  public static Answer<LinearModel> of(PlotValues plots, String... terms) {
    Refuse.unless(terms.length > 0, "A model needs at least one term.");
    PlotValues recorded = plots.recorded();
    Design design = Design.of(recorded, Stream.of(terms).map(Term::of).distinct().toList());
    if (recorded.size() == 0) {
      return Answer.lacking("No plot has a value.");
    }
    LeastSquares fit = LeastSquares.of(design.columns(), recorded.values(), recorded.weights());
    if (fit.basis().rank() == 1) {
      return Answer.lacking("All plots are alike in %s.".formatted(String.join(", ", terms)));
    }
    if (fit.residualDf() < 1) {
      return Answer.lacking(
          "%d values leave nothing to judge the error of %d means and effects by."
              .formatted(recorded.size(), fit.basis().rank()));
    }
    if (leavesNothing(fit, recorded)) {
      return Answer.lacking("The values do not vary within the groups: there is no error.");
    }
    return Answer.known(new LinearModel(recorded, plots.size() - recorded.size(), design, fit));
  }

  /** Residuals no greater than the last digits of the values, or of their differences. */
  private static boolean leavesNothing(LeastSquares fit, PlotValues plots) {
    double digits = 0;
    double[] values = plots.values();
    double[] weights = plots.weights();
    for (int i = 0; i < weights.length; i++) {
      double error = 2e-16 * Math.abs(values[i]) + 1e-13 * Math.abs(values[i] - fit.centre());
      digits += weights[i] * error * error;
    }
    return fit.residualSs() <= digits;
  }

  /** Number of plots with a value. */
  public int plots() {
    return plots.size();
  }

  /** Number of plots without one. */
  public int missing() {
    return missing;
  }

  /** Each term after those before it (type I). */
  public AnovaTable sequential() {
    return table(t -> line(t, fit, t.offset()));
  }

  /** Each term after all terms that do not contain it (type II). */
  public AnovaTable adjusted() {
    return table(t -> last(t, other -> !other.term().contains(t.term())));
  }

  /**
   * Each term after all others, written in sums to zero (type III): compares plain averages of
   * cells. Lacking if a combination of the model has no value.
   *
   * <p>Source: Yates, F. (1934) The analysis of multiple classifications with unequal numbers in
   * the different classes. Journal of the American Statistical Association 29, 51–66
   */
  public Answer<AnovaTable> averagesOfCells() {
    return fit.basis().aliased().length > 0
        ? Answer.lacking("Not every combination has a value: averages of cells cannot be compared.")
        : Answer.known(table(t -> last(t, other -> other != t)));
  }

  private AnovaTable table(Function<TermColumns, Optional<AnovaTable.Line>> line) {
    return new AnovaTable(
        design.terms().stream().map(line).flatMap(Optional::stream).toList(),
        residualDf(),
        fit.residualSs());
  }

  /** The line of a term that comes last, after the mean and those others. */
  private Optional<AnovaTable.Line> last(TermColumns term, Predicate<TermColumns> others) {
    List<double[]> all = List.of(design.columns());
    var chosen = new ArrayList<double[]>();
    chosen.add(all.get(0));
    for (TermColumns other : design.terms()) {
      if (other != term && others.test(other)) {
        chosen.addAll(all.subList(other.offset(), other.end()));
      }
    }
    int first = chosen.size();
    chosen.addAll(all.subList(term.offset(), term.end()));
    LeastSquares ordered =
        LeastSquares.of(chosen.toArray(double[][]::new), plots.values(), plots.weights());
    return line(term, ordered, first);
  }

  /** Empty where nothing is left of the term after the columns before its first. */
  private Optional<AnovaTable.Line> line(TermColumns term, LeastSquares ordered, int first) {
    int df = ordered.df(first, first + term.width());
    double ss = ordered.ss(first, first + term.width());
    return df == 0
        ? Optional.empty()
        : Optional.of(
            AnovaTable.Line.of(term.term().name(), df, ss, residualDf(), fit.residualSs()));
  }

  /** Terms of which the layout leaves something to others; empty for a sound layout. */
  public List<Confounded> confounded() {
    var found = new ArrayList<Confounded>();
    for (TermColumns t : design.terms()) {
      int[] lost =
          IntStream.range(0, fit.basis().aliased().length)
              .filter(i -> t.holds(fit.basis().aliased()[i]))
              .toArray();
      if (lost.length > 0 || t.width() == 0) {
        found.add(new Confounded(t.term().name(), lost.length, t.width(), with(lost, t)));
      }
    }
    return List.copyOf(found);
  }

  private List<String> with(int[] lost, TermColumns term) {
    Set<String> with = new LinkedHashSet<>();
    for (TermColumns other : design.terms()) {
      for (int i : lost) {
        double[] parts = fit.basis().aliasing()[i];
        for (int k = 0; k < parts.length; k++) {
          if (other != term && Math.abs(parts[k]) > 1e-7 && other.holds(fit.basis().kept()[k])) {
            with.add(other.term().name());
          }
        }
      }
    }
    return List.copyOf(with);
  }

  public int residualDf() {
    return fit.residualDf();
  }

  /** Residual standard deviation of a plot of weight 1, in the unit of the trait. */
  public double residualSd() {
    return Math.sqrt(fit.residualSs() / residualDf());
  }

  /** Mean of the values as they are, weighted where there are weights. */
  public double grandMean() {
    return fit.centre();
  }

  /** Residual standard deviation in per cent of the mean; lacking for a mean of 0 or below. */
  public Answer<Double> cvPercent() {
    return grandMean() > 0
        ? Answer.known(100 * residualSd() / grandMean())
        : Answer.lacking("A coefficient of variation needs a mean above 0.");
  }

  /** Sum of squares about the mean. */
  public double totalSs() {
    return fit.residualSs() + fit.ss(1, design.width());
  }

  /** Share of the sum of squares about the mean that the terms explain. */
  public double rSquared() {
    return fit.ss(1, design.width()) / totalSs();
  }

  /** Value less fitted value of each plot that has one, in the unit of the trait. */
  public double[] residuals() {
    double[] residuals = fit.residuals().clone();
    double[] weights = plots.weights();
    for (int i = 0; i < residuals.length; i++) {
      residuals[i] /= Math.sqrt(weights[i]);
    }
    return residuals;
  }

  /**
   * Means as if every level of the other factors had stood beside each of these, all with the same
   * weight; levels inside another factor, such as blocks inside sites, with the same weight within
   * it.
   *
   * <p>Source: Searle, S. R., Speed, F. M. and Milliken, G. A. (1980) Population marginal means in
   * the linear model. The American Statistician 34, 216–221
   *
   * @param factors one for its levels; several for their combinations, named {@code a:b}
   * @throws IllegalArgumentException if one of them is not in the model
   */
  public AdjustedMeans means(String... factors) {
    Refuse.unless(factors.length > 0, "Means need a factor.");
    return AdjustedMeans.of(new Averages(design, List.of(factors)), fit, residualSd());
  }
}
