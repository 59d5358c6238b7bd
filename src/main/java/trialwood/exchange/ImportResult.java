package trialwood.exchange;

import java.util.List;

/**
 * What came of a file.
 *
 * @param sheet the sheet's name
 * @param rows how many rows it holds
 * @param kept whether they are on record now
 * @param problemCount how many things are wrong with it
 * @param problems the first of them, by row
 */
public record ImportResult(
    String sheet, int rows, boolean kept, int problemCount, List<ImportProblem> problems) {

  /** Whether nothing is wrong with it. */
  public boolean isSound() {
    return problemCount == 0;
  }
}
