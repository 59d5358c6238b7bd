package trialwood.analysis.selection;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** The REML criterion of families along the ratio λ of their variance to that within. */
record FamilyProfile(List<FamilySample> families) {

  private static final int GRID = 100;

  /** The λ of the least criterion: the best of a grid on λ/(1 + λ), then its slope halved away. */
  double bestRatio() {
    int best = 0;
    for (int i = 1; i < GRID; i++) {
      best = minusTwoLogLikelihood(ratio(i)) < minusTwoLogLikelihood(ratio(best)) ? i : best;
    }
    double low = ratio(Math.max(0, best - 1));
    double high = best == GRID - 1 ? 1e6 * ratio(best) : ratio(best + 1);
    if (slope(low) >= 0) {
      return low;
    }
    for (int step = 0; step < 200; step++) {
      double middle = (low + high) / 2;
      if (slope(middle) < 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  double minusTwoLogLikelihood(double ratio) {
    int df = FamilySample.plants(families) - 1;
    return df * (Math.log(varianceWithin(ratio)) + 1 + Math.log(2 * Math.PI))
        + sum(family -> Math.log1p(family.plants() * ratio))
        + Math.log(totalWeight(ratio));
  }

  double varianceWithin(double ratio) {
    return squares(ratio) / (FamilySample.plants(families) - 1);
  }

  double mean(double ratio) {
    return sum(family -> weight(family, ratio) * family.mean()) / totalWeight(ratio);
  }

  double totalWeight(double ratio) {
    return sum(family -> weight(family, ratio));
  }

  /** Of the criterion along λ. */
  private double slope(double ratio) {
    double mean = mean(ratio);
    double pull =
        sum(
            family -> {
              double off = weight(family, ratio) * (family.mean() - mean);
              return off * off;
            });
    double squaredWeights = sum(family -> weight(family, ratio) * weight(family, ratio));
    return totalWeight(ratio)
        - squaredWeights / totalWeight(ratio)
        - (FamilySample.plants(families) - 1) * pull / squares(ratio);
  }

  private double squares(double ratio) {
    double mean = mean(ratio);
    return FamilySample.within(families)
        + sum(family -> weight(family, ratio) * (family.mean() - mean) * (family.mean() - mean));
  }

  private double sum(ToDoubleFunction<FamilySample> part) {
    return families.stream().mapToDouble(part).sum();
  }

  private static double weight(FamilySample family, double ratio) {
    return family.plants() / (1 + family.plants() * ratio);
  }

  private static double ratio(int step) {
    double share = step / (double) GRID;
    return share / (1 - share);
  }
}
