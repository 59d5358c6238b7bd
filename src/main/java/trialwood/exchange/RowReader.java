package trialwood.exchange;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.record.CodeKey;
import trialwood.record.Refused;

/** Reads the lines of a file as rows of a sheet, and notes every cell that cannot be read. */
final class RowReader {

  private final Sheet sheet;
  private final Codes codes;
  private final LocalDate today;
  private final ImportProblems problems;

  /** Keys that are taken, and by which row; 0 is the record. */
  private final Map<String, Integer> taken;

  RowReader(
      Sheet sheet,
      Codes codes,
      Map<String, Integer> taken,
      LocalDate today,
      ImportProblems problems) {
    this.sheet = sheet;
    this.codes = codes;
    this.taken = taken;
    this.today = today;
    this.problems = problems;
  }

  /** The rows in which every cell could be read; none at all when a column is missing. */
  List<Row> read(CsvFile file) {
    checkHeader(file.header());
    if (!problems.isEmpty()) {
      return List.of();
    }
    List<Row> rows = new ArrayList<>();
    for (CsvFile.Line line : file.lines()) {
      if (file.hasTooMany(line)) {
        problems.add(line.row(), "", "", "More cells than columns. Is a comma meant as text?");
      } else {
        Optional.ofNullable(row(line.row(), cells(file.header(), line))).ifPresent(rows::add);
      }
    }
    return rows;
  }

  private void checkHeader(List<String> header) {
    List<String> names = sheet.columns().stream().map(Column::name).toList();
    for (Column<?> column : sheet.columns()) {
      String name = column.name();
      long times = header.stream().filter(name::equals).count();
      if (times > 1 || times == 0 && column.need() != Column.Need.LATER) {
        String sentence = times == 0 ? "This column is missing." : "This column stands here twice.";
        problems.add(1, name, "", sentence + " Take the header from the sheet's template.");
      }
    }
    for (String name : header) {
      if (!names.contains(name)) {
        problems.add(
            1, name, name, "This sheet has no such column. Put its name right or drop it.");
      }
    }
  }

  private static Map<String, String> cells(List<String> header, CsvFile.Line line) {
    Map<String, String> cells = new HashMap<>();
    for (int at = 0; at < Math.min(header.size(), line.cells().size()); at++) {
      cells.put(header.get(at), line.cells().get(at));
    }
    return cells;
  }

  private @Nullable Row row(int number, Map<String, String> cells) {
    Map<String, Object> values = new HashMap<>();
    int before = problems.count();
    for (Column<?> column : sheet.columns()) {
      String cell = cells.getOrDefault(column.name(), "");
      try {
        Object value = column.read(cell, today);
        if (value != null) {
          values.put(column.name(), value);
        }
      } catch (Refused refused) {
        problems.add(number, column.name(), cell, refused.getMessage());
      }
    }
    if (problems.count() == before) {
      checkKey(number, cells);
    }
    return problems.count() == before ? new Row(number, cells, values, codes) : null;
  }

  private void checkKey(int number, Map<String, String> cells) {
    List<Column<?>> keys = keys(sheet);
    if (keys.isEmpty()) {
      return;
    }
    List<String> found = keys.stream().map(key -> cells.getOrDefault(key.name(), "")).toList();
    Integer first = taken.putIfAbsent(key(found), number);
    if (first != null) {
      problems.add(
          number,
          keys.get(keys.size() - 1).name(),
          String.join(" ", found),
          first == 0
              ? "This is on record already. Drop the row."
              : "Row %d says this already. Keep one of the two.".formatted(first));
    }
  }

  static List<Column<?>> keys(Sheet sheet) {
    return sheet.columns().stream().filter(Column::isKey).collect(Collectors.toList());
  }

  /** One spelling for however the key cells were typed. */
  static String key(List<String> cells) {
    return cells.stream().map(RowReader::key).collect(Collectors.joining("\t"));
  }

  private static String key(String cell) {
    String key = CodeKey.of(cell);
    return key.isEmpty() ? Cell.bare(cell) : key;
  }
}
