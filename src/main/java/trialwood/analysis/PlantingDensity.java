package trialwood.analysis;

/**
 * A square or rectangular planting distance and what follows from it.
 *
 * <pre>plants per acre = 43,560 / (a ft × b ft),  plants per hectare = 10,000 / (a m × b m)</pre>
 *
 * Whole area planted, headlands and roads not counted.
 *
 * @param inRow metres from plant to plant, above 0
 * @param betweenRows metres from row to row, above 0
 */
public record PlantingDensity(double inRow, double betweenRows) {

  /** Metres in a foot, by definition (international yard and pound agreement, 1959). */
  private static final double FOOT = 0.3048;

  private static final double SQUARE_FEET_PER_ACRE = 43_560;
  private static final double SQUARE_METRES_PER_HECTARE = 10_000;

  public PlantingDensity {
    Refuse.unless(
        inRow > 0 && betweenRows > 0 && Double.isFinite(inRow) && Double.isFinite(betweenRows),
        "A planting distance must be above 0, not %s × %s m.",
        inRow,
        betweenRows);
  }

  public static PlantingDensity metres(double inRow, double betweenRows) {
    return new PlantingDensity(inRow, betweenRows);
  }

  public static PlantingDensity feet(double inRow, double betweenRows) {
    return new PlantingDensity(inRow * FOOT, betweenRows * FOOT);
  }

  public double perAcre() {
    return SQUARE_FEET_PER_ACRE * FOOT * FOOT / areaOfOne();
  }

  public double perHectare() {
    return SQUARE_METRES_PER_HECTARE / areaOfOne();
  }

  /** Land for so many plants, in acres. */
  public double acresFor(int plants) {
    return refuseNegative(plants) / perAcre();
  }

  /** Land for so many plants, in hectares. */
  public double hectaresFor(int plants) {
    return refuseNegative(plants) / perHectare();
  }

  /** Length of all rows together for so many plants, in metres. */
  public double rowMetresFor(int plants) {
    return refuseNegative(plants) * inRow;
  }

  private double areaOfOne() {
    return inRow * betweenRows;
  }

  private static int refuseNegative(int plants) {
    Refuse.unless(plants >= 0, "The number of plants cannot be negative: %d.", plants);
    return plants;
  }
}
