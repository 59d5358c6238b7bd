package trialwood.analysis.distinct;

import trialwood.analysis.Refuse;

/**
 * What was measured of one variety in one year.
 *
 * @param variety its name or number
 * @param year of test
 * @param mean of its plants
 * @param sd between its plants, 0 or above, in the unit of the mean
 */
public record VarietyYear(String variety, int year, double mean, double sd) {

  public VarietyYear {
    Refuse.unlessFinite(mean, "mean of a variety");
    Refuse.unless(
        sd >= 0 && Double.isFinite(sd), "A standard deviation is 0 or above, not %s.", sd);
  }

  /** ln(sd + 1), on which spreads are compared. */
  double logSpread() {
    return Math.log(sd + 1);
  }
}
