package trialwood.analysis.growth;

import trialwood.analysis.Refuse;

/**
 * One measurement of one plant or plot. A reading that was missed is not a reading.
 *
 * @param time when, in any one unit
 * @param value what was seen
 */
public record Reading(double time, double value) {

  public Reading {
    Refuse.unlessFinite(time, "time of a reading");
    Refuse.unlessFinite(value, "value of a reading");
  }
}
