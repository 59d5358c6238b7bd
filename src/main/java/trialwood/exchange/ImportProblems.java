package trialwood.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trialwood.record.Problem;
import trialwood.record.Refused;

/** Everything that is wrong with a file; a list without end is cut, the count is not. */
final class ImportProblems {

  static final int LISTED = 20_000;

  private static final int LONGEST = 60;

  private final Sheet sheet;
  private final List<ImportProblem> first = new ArrayList<>();
  private int count;

  ImportProblems(Sheet sheet) {
    this.sheet = sheet;
  }

  void add(int row, String column, String found, String sentence) {
    count++;
    if (first.size() < LISTED) {
      String shown = found.length() > LONGEST ? found.substring(0, LONGEST) + " …" : found;
      first.add(new ImportProblem(row, column, shown, sentence));
    }
  }

  /** Finds the column of each thing that a rule refused. */
  void add(Row row, Refused refused) {
    for (Problem problem : refused.problems()) {
      String column = sheet.columnOf(problem.field());
      add(row.number(), column, row.found(column), problem.sentence());
    }
  }

  boolean isEmpty() {
    return count == 0;
  }

  int count() {
    return count;
  }

  /** By row. */
  List<ImportProblem> list() {
    return first.stream().sorted(Comparator.comparingInt(ImportProblem::row)).toList();
  }
}
