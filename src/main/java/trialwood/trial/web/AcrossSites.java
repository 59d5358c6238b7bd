package trialwood.trial.web;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.mixed.AdjustedMeans;
import trialwood.analysis.mixed.Heritability;
import trialwood.analysis.mixed.VarianceComponent;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.EntryMeans;
import trialwood.analysis.trial.PlotValue;
import trialwood.analysis.trial.TrialCell;
import trialwood.analysis.trial.TrialFit;
import trialwood.analysis.trial.TrialModel;

/**
 * The means of a trait over sites and seasons: by the mixed model where the layout carries it,
 * otherwise by least squares, and the page says which.
 *
 * @param means adjusted mean with its standard error, by entry
 * @param ranking shrunken means, the best first; empty where entries cannot be shrunken or no way
 *     of the trait is better
 * @param shares where the variation lies, largest first; empty for least squares
 * @param heritability of the shrunken means
 * @param plots how many plot values it was made from
 * @param degreesOfFreedom of the chances against the check; 0 for least squares
 * @param leftOut what the layout cannot tell apart, one sentence each
 * @param why not the mixed model, or, where there are no means at all, why not; none otherwise
 */
record AcrossSites(
    Map<String, Mean> means,
    List<Ranked> ranking,
    List<Share> shares,
    @Nullable Double heritability,
    int plots,
    int degreesOfFreedom,
    List<String> leftOut,
    @Nullable String why) {

  /** An adjusted mean and its standard error. */
  record Mean(double value, double se) {}

  /**
   * A shrunken mean; {@code ahead} is the chance to beat the check in a site-season not yet seen.
   */
  record Ranked(TrialFit.ShrunkenMean mean, @Nullable Double ahead) {}

  /** A part of the variance of one plot value, 0 to 1. */
  record Share(String term, double part) {}

  static AcrossSites of(
      Collection<PlotValue> plots,
      Collection<TrialCell> cells,
      Optional<Better> better,
      String check) {
    if (cells.isEmpty()) {
      return without("There is no value yet.");
    }
    Answer<TrialFit> fit = TrialModel.of(plots);
    return fit instanceof Answer.Known<TrialFit> known
        ? fitted(known.answer(), better, check)
        : leastSquares(cells, fit.lack().orElseThrow());
  }

  /** How the adjusted means were come by. */
  public String method() {
    if (means.isEmpty()) {
      return "";
    }
    return why == null
        ? "Adjusted means: mixed model over %d plot values by restricted maximum likelihood, with site-seasons and entries fixed, and blocks, plots and the interactions of entries random; ± is the standard error. The chance in a new site-season is by Student’s t with the %d degrees of freedom of the entries’ interaction with places; shrunken means and the chance to be among the best three take the variances as known, and with few sites are surer than they should be."
            .formatted(plots, degreesOfFreedom)
        : "Adjusted means: least squares on entry and site-season, not the mixed model. " + why;
  }

  private static AcrossSites fitted(TrialFit fit, Optional<Better> better, String check) {
    AdjustedMeans adjusted = fit.means();
    Map<String, Mean> means =
        IntStream.range(0, adjusted.means().length)
            .boxed()
            .collect(
                Collectors.toMap(
                    i -> adjusted.levels().get(i),
                    i ->
                        new Mean(adjusted.means()[i], Math.sqrt(adjusted.covariance().get(i, i)))));
    double sum = fit.fixed().variances().stream().mapToDouble(VarianceComponent::variance).sum();
    List<Share> shares =
        fit.fixed().variances().stream()
            .map(component -> new Share(words(component.term()), component.variance() / sum))
            .sorted((one, other) -> Double.compare(other.part(), one.part()))
            .toList();
    return new AcrossSites(
        means,
        better.map(way -> ranking(fit, way, check)).orElse(List.of()),
        shares,
        fit.heritability().value().map(Heritability::cullis).orElse(null),
        fit.values(),
        fit.degreesOfFreedom(),
        fit.leftOut().stream().map(one -> words(one.why())).toList(),
        null);
  }

  private static List<Ranked> ranking(TrialFit fit, Better better, String check) {
    boolean checked = fit.means().levels().contains(check);
    return fit.shrunkenMeans(better).value().orElse(List.of()).stream()
        .map(
            mean ->
                new Ranked(
                    mean,
                    checked && !mean.entry().equals(check)
                        ? fit.chanceBetterInNewSiteSeason(mean.entry(), check, better)
                        : null))
        .toList();
  }

  private static AcrossSites leastSquares(Collection<TrialCell> cells, String why) {
    Answer<EntryMeans> fitted = EntryMeans.of(cells);
    Map<String, Mean> means =
        fitted
            .value()
            .map(
                all ->
                    all.means().stream()
                        .collect(
                            Collectors.toMap(
                                mean -> mean.entry(),
                                mean ->
                                    new Mean(mean.mean().estimate(), mean.mean().standardError()))))
            .orElse(Map.of());
    return new AcrossSites(
        means, List.of(), List.of(), null, 0, 0, List.of(), fitted.lack().orElse(why));
  }

  private static AcrossSites without(String why) {
    return new AcrossSites(Map.of(), List.of(), List.of(), null, 0, 0, List.of(), why);
  }

  /** The terms as people write them. */
  private static String words(String text) {
    return text.replace("site:block", "block")
        .replace("Residual", "plot error")
        .replace(":", " × ");
  }
}
