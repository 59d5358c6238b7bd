package trialwood.exchange;

import java.util.List;

/**
 * What came of a file.
 *
 * @param sheet the sheet's name
 * @param rows how many rows it holds
 * @param kept whether they are on record now
 * @param problemCount how many things are wrong with it
 * @param problems all of them but in a file that is wrong throughout, by row
 */
public record ImportResult(
    String sheet, int rows, boolean kept, int problemCount, List<ImportProblem> problems) {

  private static final int SHOWN = 200;

  /** As many problems as a page can show. */
  public List<ImportProblem> shown() {
    return problems.subList(0, Math.min(problems.size(), SHOWN));
  }

  /** Whether nothing is wrong with it. */
  public boolean isSound() {
    return problemCount == 0;
  }
}
