package trialwood.analysis.time;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;
import trialwood.analysis.Answer;
import trialwood.analysis.Covariance;
import trialwood.analysis.Interval;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * Days to root as a log-normal, Weibull or log-logistic variable, log T = location + scale × z, by
 * maximum likelihood from intervals: a location for each treatment, one scale. With a never-root
 * fraction c for each treatment the times are those of the cuttings that root; without it every
 * cutting is taken to root in the end.
 *
 * <p>Source: Kalbfleisch, J. D. and Prentice, R. L. (2002) The Statistical Analysis of Failure Time
 * Data, 2nd ed. Wiley, chapter 3; Boag, J. W. (1949) Journal of the Royal Statistical Society B 11,
 * 15–53, and Farewell, V. T. (1982) Biometrics 38, 1041–1046, for the fraction that never does
 *
 * @param shape of the times
 * @param treatments their names, the baseline first; a single one is allowed
 * @param locations of log T, one for each treatment
 * @param logScale log of the scale
 * @param never c for each treatment; 0 in a fit without, and where the likelihood is highest at 0
 * @param logLikelihood at the maximum
 * @param covariance of (locations …, log scale, logit c …) by observed information; a c of 0 is
 *     taken as known and has no row
 */
public record TimeFit(
    TimeShape shape,
    List<String> treatments,
    List<Double> locations,
    double logScale,
    List<Double> never,
    double logLikelihood,
    Covariance covariance) {

  /**
   * The day by which a share has rooted.
   *
   * @param day in days after sticking
   * @param logError standard error of log day, by the delta method
   */
  public record Day(double day, double logError) {

    /** Standard error in days. */
    public double error() {
      return day * logError;
    }

    /** Limits by a normal interval of log day. */
    public Interval interval(double level) {
      Refuse.unlessInside(level, "level of an interval");
      double half = Quantile.of(NormalDistribution.of(0, 1), (1 + level) / 2) * logError;
      return new Interval(day * Math.exp(-half), day * Math.exp(half), level);
    }
  }

  public double scale() {
    return Math.exp(logScale);
  }

  /** Minus twice the log-likelihood plus twice the number of parameters. */
  public double aic() {
    return 2 * (covariance.size() - logLikelihood);
  }

  /** The baseline's location, or how far a treatment's lies from it. */
  public double coefficient(int treatment) {
    return treatment == 0 ? locations.get(0) : locations.get(treatment) - locations.get(0);
  }

  /** Standard error of {@link #coefficient}. */
  public double coefficientError(int treatment) {
    if (treatment == 0) {
      return covariance.error(0);
    }
    double[] weights = new double[covariance.size()];
    weights[treatment] = 1;
    weights[0] = -1;
    return covariance.errorOf(weights);
  }

  public double logScaleError() {
    return covariance.error(logScaleIndex());
  }

  /** Covariance of a treatment's location and the log scale. */
  public double locationScaleCovariance(int treatment) {
    return covariance.between(treatment, logScaleIndex());
  }

  /**
   * How many times as long a treatment takes as the baseline, at every share of those that root.
   */
  public double timeRatio(int treatment) {
    Refuse.unless(treatment > 0, "The baseline is not compared with itself.");
    return Math.exp(coefficient(treatment));
  }

  /** The interval of {@link #timeRatio}, normal on the log scale. */
  public Interval timeRatioInterval(int treatment, double level) {
    return new Day(timeRatio(treatment), coefficientError(treatment)).interval(level);
  }

  /**
   * The day by which a share of the cuttings that ever root has rooted.
   *
   * @param share of those that root, 0 &lt; share &lt; 1
   */
  public Day dayOfRooters(int treatment, double share) {
    Refuse.unlessInside(share, "share rooted");
    double step = scale() * shape.quantile(share);
    return new Day(Math.exp(locations.get(treatment) + step), logError(treatment, step, 0));
  }

  /**
   * The day by which a share of all cuttings stuck has rooted; lacking if so many never root.
   *
   * @param share of all stuck, 0 &lt; share &lt; 1
   */
  public Answer<Day> dayOfAll(int treatment, double share) {
    Refuse.unlessInside(share, "share rooted");
    double c = never.get(treatment);
    double ofRooters = share / (1 - c);
    if (ofRooters >= 1) {
      return Answer.lacking("So large a share is not expected to root.");
    }
    double z = shape.quantile(ofRooters);
    double step = scale() * z;
    double perLogit = c == 0 ? 0 : scale() * ofRooters * c / shape.density(z);
    return Answer.known(
        new Day(Math.exp(locations.get(treatment) + step), logError(treatment, step, perLogit)));
  }

  /** The share of all stuck expected to have rooted by a day. */
  public double rootedBy(int treatment, double day) {
    Refuse.unless(day >= 0, "A day is counted from 0, not %s.", day);
    double z = (Math.log(day) - locations.get(treatment)) / scale();
    return (1 - never.get(treatment)) * shape.below(z);
  }

  /** Delta method: the derivative by the location is 1, by the log scale and logit c as given. */
  private double logError(int treatment, double byLogScale, double byLogitNever) {
    double[] derivative = new double[covariance.size()];
    derivative[treatment] = 1;
    derivative[logScaleIndex()] = byLogScale;
    if (byLogitNever != 0) {
      derivative[neverIndex(treatment)] = byLogitNever;
    }
    return covariance.errorOf(derivative);
  }

  private int logScaleIndex() {
    return treatments.size();
  }

  private int neverIndex(int treatment) {
    return logScaleIndex()
        + 1
        + (int) never.subList(0, treatment).stream().filter(c -> c > 0).count();
  }
}
