package trialwood.arithmetic;

import trialwood.analysis.bench.Strength;
import trialwood.web.Measures;

/** How a strength is said: in ppm and in percent, so that neither is taken for the other. */
final class Strengths {

  private Strengths() {}

  static String words(Strength strength, Measures measures) {
    return measures.quantity(strength.ppm(), 0, "ppm")
        + " = "
        + measures.quantity(strength.percent(), 3, "%");
  }
}
