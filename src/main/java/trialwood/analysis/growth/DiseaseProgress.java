package trialwood.analysis.growth;

import java.util.Collection;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * The progress of a disease on one plant or plot, in per cent of leaf (or plant) affected, as one
 * number: the area under its curve, in per cent × time. By trapezoids (AUDPC)
 *
 * <pre>Σ (y_i + y_{i+1})/2 · (t_{i+1} − t_i)</pre>
 *
 * and by stairs (AUDPS), which gives the first and last reading the weight of a full interval,
 *
 * <pre>AUDPC + (y_1 + y_n)/2 · (t_n − t_1)/(n − 1)</pre>
 *
 * Readings that were missed are left out; the line runs over the gap.
 *
 * <p>Sources: Shaner, G. and Finney, R. E. (1977) The effect of nitrogen fertilization on the
 * expression of slow-mildewing resistance in Knox wheat. Phytopathology 67, 1051–1056; Simko, I.
 * and Piepho, H.-P. (2012) The area under the disease progress stairs. Phytopathology 102, 381–389
 *
 * @param curve severities, 0 to 100, at two times or more
 */
public record DiseaseProgress(GrowthCurve curve) {

  public DiseaseProgress {
    for (Reading reading : curve.readings()) {
      Refuse.unless(
          reading.value() >= 0 && reading.value() <= 100,
          "A severity lies between 0 and 100 per cent, not at %s.",
          reading.value());
    }
    Refuse.unless(curve.readings().size() > 1, "An area needs readings at two times.");
  }

  /** Lacking with fewer than two readings. */
  public static Answer<DiseaseProgress> of(Collection<Reading> readings) {
    return readings.size() < 2
        ? Answer.lacking("The area under a disease's progress needs readings at two times.")
        : Answer.known(new DiseaseProgress(GrowthCurve.of(readings)));
  }

  /** AUDPC, in per cent × time. */
  public double area() {
    return curve.area();
  }

  /** AUDPC ÷ duration: the mean severity in per cent. */
  public double meanSeverity() {
    return area() / curve.duration();
  }

  /** AUDPC as a share of the area of a plant wholly affected all the time, 0 to 1. */
  public double relativeArea() {
    return meanSeverity() / 100;
  }

  /** AUDPS, in per cent × time. */
  public double stairs() {
    double step = curve.duration() / (curve.readings().size() - 1);
    return area() + (curve.first().value() + curve.last().value()) / 2 * step;
  }

  /**
   * Mean severity as a share of that of the susceptible check over the same time: 1 for a plant as
   * badly hit. Lacking where the check stayed clean, for then the disease never came, or was seen
   * over another time.
   */
  public Answer<Double> against(DiseaseProgress check) {
    if (curve.first().time() != check.curve.first().time()
        || curve.last().time() != check.curve.last().time()) {
      return Answer.lacking("The check was not read from the same first to the same last time.");
    }
    return check.area() > 0
        ? Answer.known(area() / check.area())
        : Answer.lacking("The susceptible check stayed clean: there was no disease to resist.");
  }
}
