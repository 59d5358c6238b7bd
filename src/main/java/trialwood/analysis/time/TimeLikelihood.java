package trialwood.analysis.time;

import java.util.List;
import trialwood.analysis.Maximum.Surface;

/**
 * The log-likelihood of times known to lie in intervals, for several treatments: a location for
 * each treatment (or one for all), one log scale, and the logit of a never-root fraction c for the
 * treatments that have one. A cutting that rooted in (l, r] gives log((1 − c)(F(r) − F(l))), one
 * not rooted by l gives log(c + (1 − c)(1 − F(l))).
 */
final class TimeLikelihood {

  private final TimeShape shape;
  private final List<TreatmentTimes> treatments;
  private final boolean oneLocation;

  /** Index of each treatment's logit c among the parameters; −1 where c = 0. */
  private final int[] never;

  private final int logScale;
  private final int parameters;

  TimeLikelihood(
      TimeShape shape, List<TreatmentTimes> treatments, boolean oneLocation, boolean[] hasNever) {
    this.shape = shape;
    this.treatments = treatments;
    this.oneLocation = oneLocation;
    this.logScale = oneLocation ? 1 : treatments.size();
    this.never = new int[treatments.size()];
    int next = logScale + 1;
    for (int g = 0; g < never.length; g++) {
      never[g] = hasNever[g] ? next++ : -1;
    }
    this.parameters = next;
  }

  int location(int treatment) {
    return oneLocation ? 0 : treatment;
  }

  int logScale() {
    return logScale;
  }

  int never(int treatment) {
    return never[treatment];
  }

  int parameters() {
    return parameters;
  }

  Surface at(double[] x) {
    Surface surface = Surface.flat(parameters);
    double value = 0;
    for (int g = 0; g < treatments.size(); g++) {
      double logit = never[g] < 0 ? Double.NEGATIVE_INFINITY : x[never[g]];
      for (RootedBetween look : treatments.get(g).looks()) {
        Share share = share(look, x[location(g)], x[logScale]);
        value += look.cuttings() * add(surface, g, look, share, 1 / (1 + Math.exp(-logit)));
      }
    }
    return surface.withValue(value);
  }

  /** A probability and its derivatives by the location m and the log scale s. */
  private record Share(double value, double m, double s, double mm, double ms, double ss) {

    Share scaled(double factor) {
      return new Share(
          factor * value, factor * m, factor * s, factor * mm, factor * ms, factor * ss);
    }

    Share plus(double more) {
      return new Share(value + more, m, s, mm, ms, ss);
    }
  }

  /** F(by) − F(after), or 1 − F(after). */
  private Share share(RootedBetween look, double location, double logScale) {
    double scale = Math.exp(logScale);
    double from = (Math.log(look.after()) - location) / scale;
    double to = (Math.log(look.by()) - location) / scale;
    double value =
        from > 0 ? shape.above(from) - shape.above(to) : shape.below(to) - shape.below(from);
    Share high = edge(to, scale);
    Share low = edge(from, scale);
    return new Share(
        value,
        high.m - low.m,
        high.s - low.s,
        high.mm - low.mm,
        high.ms - low.ms,
        high.ss - low.ss);
  }

  /** Derivatives of F(z), z = (log t − m)/exp s. */
  private Share edge(double z, double scale) {
    if (Double.isInfinite(z)) {
      return new Share(0, 0, 0, 0, 0, 0);
    }
    double f = shape.density(z);
    double slope = shape.slope(z);
    return new Share(
        0,
        -f / scale,
        -f * z,
        slope / (scale * scale),
        (slope * z + f) / scale,
        slope * z * z + f * z);
  }

  private double add(Surface surface, int g, RootedBetween look, Share share, double c) {
    double n = look.cuttings();
    int m = location(g);
    int q = never[g];
    Share seen = look.rooted() ? share : share.scaled(1 - c).plus(c);
    double[] gradient = surface.gradient();
    double[][] hessian = surface.hessian();
    double bm = seen.m / seen.value;
    double bs = seen.s / seen.value;
    gradient[m] += n * bm;
    gradient[logScale] += n * bs;
    hessian[m][m] += n * (seen.mm / seen.value - bm * bm);
    hessian[logScale][logScale] += n * (seen.ss / seen.value - bs * bs);
    both(hessian, m, logScale, n * (seen.ms / seen.value - bm * bs));
    if (q < 0) {
      return Math.log(seen.value);
    }
    double perLogit = c * (1 - c);
    if (look.rooted()) {
      gradient[q] -= n * c;
      hessian[q][q] -= n * perLogit;
      return Math.log(seen.value) + Math.log1p(-c);
    }
    double bq = perLogit * (1 - share.value) / seen.value;
    gradient[q] += n * bq;
    hessian[q][q] += n * (bq * (1 - 2 * c) - bq * bq);
    both(hessian, m, q, n * (-perLogit * share.m / seen.value - bm * bq));
    both(hessian, logScale, q, n * (-perLogit * share.s / seen.value - bs * bq));
    return Math.log(seen.value);
  }

  private static void both(double[][] hessian, int i, int j, double part) {
    hessian[i][j] += part;
    hessian[j][i] += part;
  }
}
