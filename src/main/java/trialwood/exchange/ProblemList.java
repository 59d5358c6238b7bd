package trialwood.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trialwood.record.Refused;
import trialwood.web.CsvRows;

/** What is wrong with a file, as a file: each problem beside the row that it is about. */
public final class ProblemList {

  private static final List<String> FRONT = List.of("row", "column", "problem");

  private ProblemList() {}

  /** The bad rows as they were sent, behind where and what is wrong; one line a problem. */
  public static String of(byte[] file, List<ImportProblem> problems) {
    Map<Integer, List<String>> sent = new TreeMap<>();
    List<String> head = new ArrayList<>(FRONT);
    try {
      CsvFile read = CsvFile.read(file);
      head.addAll(read.header());
      read.lines().forEach(line -> sent.put(line.row(), line.cells()));
    } catch (Refused noTable) {
      // then the list says so, with no rows beside it
    }
    return CsvRows.of(
        head,
        problems.stream().map(one -> line(one, sent.getOrDefault(one.row(), List.of()))).toList());
  }

  private static List<String> line(ImportProblem problem, List<String> cells) {
    List<String> line = new ArrayList<>();
    line.add(problem.row() == 0 ? "file" : String.valueOf(problem.row()));
    line.add(problem.column());
    line.add(problem.sentence());
    cells.stream().map(Cell::bare).forEach(line::add);
    return line;
  }
}
