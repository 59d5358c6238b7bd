package trialwood.exchange;

/**
 * One thing that is wrong with a file.
 *
 * @param row as a spreadsheet counts, the column names being row 1; 0 for the file as a whole
 * @param column name of the column; empty when the whole row is meant
 * @param found what stands in the cell
 * @param sentence what is wrong and what to do
 */
public record ImportProblem(int row, String column, String found, String sentence) {

  @Override
  public String toString() {
    return "row %d, %s \"%s\": %s".formatted(row, column, found, sentence);
  }
}
