package trialwood.analysis.means;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;

/**
 * Means of a linear model by level, and whatever can be asked of them: differences, contrasts, all
 * pairs, all against a check. Each may be lacking where the layout has no answer.
 */
public final class AdjustedMeans {

  private final Map<String, LinearFunction> means;
  private final double residualSd;
  private final int residualDf;

  private AdjustedMeans(Map<String, LinearFunction> means, double residualSd, int residualDf) {
    this.means = means;
    this.residualSd = residualSd;
    this.residualDf = residualDf;
  }

  static AdjustedMeans of(Averages averages, LeastSquares fit, double residualSd) {
    var means = new LinkedHashMap<String, LinearFunction>();
    averages.rows().forEach((name, row) -> means.put(name, fit.function(row)));
    return new AdjustedMeans(means, residualSd, fit.residualDf());
  }

  /** The levels, in alphabetical order; combinations as {@code a:b}. */
  public List<String> names() {
    return List.copyOf(means.keySet());
  }

  /** Residual degrees of freedom, those of every standard error here. */
  public int residualDf() {
    return residualDf;
  }

  /**
   * The mean of a level, with its standard error.
   *
   * @throws IllegalArgumentException if there is no such level
   */
  public Answer<StudentBelief> of(String name) {
    return function(name).belief("The mean of " + name, residualSd, residualDf);
  }

  /**
   * The mean of one level less that of another.
   *
   * @throws IllegalArgumentException if one of them does not exist
   */
  public Answer<StudentBelief> difference(String name, String other) {
    return function(name)
        .minus(function(other))
        .belief("The difference of %s and %s".formatted(name, other), residualSd, residualDf);
  }

  /**
   * A weighted sum of means.
   *
   * @param coefficients by level, together 0 but not all 0; levels left out count 0
   * @throws IllegalArgumentException if they do not add up to 0, or a level does not exist
   */
  public Answer<Contrast> contrast(Map<String, Double> coefficients) {
    double sum = coefficients.values().stream().mapToDouble(c -> c).sum();
    double size = coefficients.values().stream().mapToDouble(Math::abs).sum();
    Refuse.unless(
        size > 0 && Math.abs(sum) <= 1e-9 * size,
        "The coefficients of a contrast add up to 0, not %s, and are not all 0.",
        sum);
    LinearFunction contrast = function(names().get(0)).times(0);
    for (Map.Entry<String, Double> part : coefficients.entrySet()) {
      contrast = contrast.plus(part.getValue(), function(part.getKey()));
    }
    double squaredLength = contrast.squaredLength();
    Answer<StudentBelief> belief = contrast.belief("The contrast", residualSd, residualDf);
    return belief instanceof Answer.Known<StudentBelief> known
        ? Answer.known(Contrast.of(known.answer(), squaredLength))
        : Answer.lacking(belief.lack().orElseThrow());
  }

  /** Every pair of levels. */
  public PairwiseDifferences pairs() {
    return PairwiseDifferences.of(this);
  }

  /**
   * Every level against one of them. Lacking if the check stands alone or cannot be compared.
   *
   * @throws IllegalArgumentException if there is no such level
   */
  public Answer<CheckDifferences> against(String check) {
    return CheckDifferences.of(this, check);
  }

  LinearFunction function(String name) {
    LinearFunction mean = means.get(name);
    if (mean == null) {
      throw new IllegalArgumentException("There is no mean of " + name + ".");
    }
    return mean;
  }
}
