package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/**
 * Room for pots at an equal distance, centre to centre. In a square each takes distance²; with
 * every other row shifted by half a distance, √3 ÷ 2 = 0.866 of that. Paths and edges are not
 * counted.
 *
 * @param metres from centre to centre, above 0
 */
public record PotSpacing(double metres) {

  private static final double STAGGERED = Math.sqrt(3) / 2;

  public PotSpacing {
    Refuse.unless(metres > 0 && Double.isFinite(metres), "A distance must be above 0.");
  }

  /** Pots on so many square metres, in a square; not rounded. */
  public double square(double squareMetres) {
    Refuse.unless(squareMetres > 0, "An area must be above 0.");
    return squareMetres / (metres * metres);
  }

  /** Pots on so many square metres, rows staggered; not rounded. */
  public double staggered(double squareMetres) {
    return square(squareMetres) / STAGGERED;
  }
}
