package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * A linear mixed model
 *
 * <pre>value = fixed effects + Σ random effects + residual</pre>
 *
 * Random effects of a term are independent, N(0, σₖ²), and so are the residuals, N(0, σ²). Terms
 * may be nested or crossed in any way. Variances are estimated by restricted maximum likelihood,
 * none below 0.
 *
 * <p>Source: Patterson, H. D. and Thompson, R. (1971) Recovery of inter-block information when
 * block sizes are unequal. Biometrika 58, 545–554
 */
public final class MixedModel {

  private static final int MOST_RANDOM_TERMS = 16;

  private final double[] values;
  private final List<Factor> fixed = new ArrayList<>();
  private final List<Factor> random = new ArrayList<>();

  private MixedModel(double[] values) {
    this.values = values;
  }

  /**
   * A model of these values, with a general mean and nothing else yet.
   *
   * @throws IllegalArgumentException if a value is not a finite number
   */
  public static MixedModel of(double[] values) {
    for (double value : values) {
      Refuse.unlessFinite(value, "value");
    }
    return new MixedModel(values.clone());
  }

  /** With effects of the levels of a factor, each for itself. */
  public MixedModel fixed(Factor factor) {
    return with(fixed, factor);
  }

  /** With effects of the levels that are drawn from one population. */
  public MixedModel random(Factor factor) {
    Refuse.unless(random.size() < MOST_RANDOM_TERMS, "Too many random terms.");
    return with(random, factor);
  }

  private MixedModel with(List<Factor> kind, Factor factor) {
    Refuse.unless(
        factor.size() == values.length,
        "%s classifies %d values, not %d.",
        factor.name(),
        factor.size(),
        values.length);
    Refuse.unless(
        !factor.name().equals(MixedFit.RESIDUAL)
            && Stream.concat(fixed.stream(), random.stream())
                .noneMatch(other -> other.name().equals(factor.name())),
        "The model has %s already.",
        factor.name());
    var copy = new MixedModel(values);
    copy.fixed.addAll(fixed);
    copy.random.addAll(random);
    (kind == fixed ? copy.fixed : copy.random).add(factor);
    return copy;
  }

  /**
   * Fits the model. Lacking where there are no more values than fixed effects, where all values are
   * what the fixed effects say, where two random terms cannot be told apart, or where the search
   * does not settle.
   */
  public Answer<MixedFit> fit() {
    if (values.length == 0) {
      return Answer.lacking("There are no values.");
    }
    FixedPart columns = FixedPart.of(fixed, values.length);
    if (values.length <= columns.count()) {
      return Answer.lacking(
          "%d values are too few for %d fixed effects.".formatted(values.length, columns.count()));
    }
    for (Factor term : random) {
      Optional<String> trouble = trouble(term);
      if (trouble.isPresent()) {
        return Answer.lacking(trouble.get());
      }
    }
    double centre = Arrays.stream(values).average().orElseThrow();
    double[] centred = about(centre);
    Layout layout = Layout.of(centred, columns, random);
    Moments moments = Moments.of(centred, columns, layout);
    if (!(moments.total() > 0)) {
      return Answer.lacking("The values do not vary.");
    }
    RemlSearch.End end = RemlSearch.from(layout, moments.start());
    return end.settled()
        ? Answer.known(new MixedFit(end, centre))
        : Answer.lacking("The variances did not settle.");
  }

  /** Values less their centre: far from 0 the squares would drown what they differ by. */
  private double[] about(double centre) {
    return Arrays.stream(values).map(value -> value - centre).toArray();
  }

  /**
   * Why a random term cannot be told from another of this model, from its fixed effects or from the
   * residual; empty if it can.
   */
  public Optional<String> trouble(Factor term) {
    if (term.levels().size() == values.length) {
      return Optional.of(
          "%s has one value a level: it cannot be told from the residual.".formatted(term.name()));
    }
    if (term.levels().size() == 1) {
      return Optional.of(
          "%s has one level: its variance cannot be estimated.".formatted(term.name()));
    }
    for (Factor other : random) {
      if (other != term
          && other.levels().size() == term.levels().size()
          && term.isNestedIn(other)) {
        return Optional.of(
            "%s and %s sort the values alike: they cannot be told apart."
                .formatted(other.name(), term.name()));
      }
    }
    for (Factor other : fixed) {
      if (term.levels().size() <= other.levels().size() && other.isNestedIn(term)) {
        return Optional.of(
            "%s is settled by the fixed %s: its variance cannot be estimated."
                .formatted(term.name(), other.name()));
      }
    }
    return Optional.empty();
  }
}
