package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/**
 * Trays for a number of cuttings: full ones and what stands in the last.
 *
 * @param trays rounded up
 * @param inLast cuttings in the last tray, from 1 up to its cells
 */
public record Trays(int trays, int inLast) {

  /**
   * @param cuttings at least 1
   * @param cells of a tray, at least 1
   */
  public static Trays of(int cuttings, int cells) {
    Refuse.unless(cuttings > 0 && cells > 0, "Cuttings and cells must be above 0.");
    int trays = (cuttings - 1) / cells + 1;
    return new Trays(trays, cuttings - (trays - 1) * cells);
  }
}
