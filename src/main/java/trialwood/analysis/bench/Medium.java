package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/** Medium that containers take, by their true volume, which their class only hints at. */
public final class Medium {

  private static final double ML_PER_LITRE = 1_000;

  private Medium() {}

  /**
   * Litres for so many containers.
   *
   * @param litresEach true volume of one, above 0
   */
  public static double litres(int containers, double litresEach) {
    Refuse.unless(containers > 0 && litresEach > 0, "Number and volume must be above 0.");
    return containers * litresEach;
  }

  /**
   * Millilitres of one cell.
   *
   * @param trayLitres what the whole tray takes, above 0
   */
  public static double cellMl(double trayLitres, int cells) {
    Refuse.unless(trayLitres > 0 && cells > 0, "Volume and cells must be above 0.");
    return trayLitres * ML_PER_LITRE / cells;
  }
}
