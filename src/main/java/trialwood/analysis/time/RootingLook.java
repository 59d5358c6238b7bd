package trialwood.analysis.time;

import trialwood.analysis.Refuse;

/**
 * One look at a sample of cuttings.
 *
 * @param day whole days after sticking, at least 1
 * @param lifted cuttings lifted to look at, at least 1
 * @param rooted of those
 */
public record RootingLook(int day, int lifted, int rooted) {

  public RootingLook {
    Refuse.unless(day > 0, "A look comes at least one day after sticking, not on day %d.", day);
    Refuse.unless(lifted > 0, "A look lifts at least one cutting, not %d.", lifted);
    Refuse.unless(rooted >= 0, "The number rooted cannot be negative: %d.", rooted);
    Refuse.unless(rooted <= lifted, "%d rooted of %d lifted is impossible.", rooted, lifted);
  }

  /** Rooted ÷ lifted. */
  public double share() {
    return (double) rooted / lifted;
  }
}
