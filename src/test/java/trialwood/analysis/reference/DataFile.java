package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;

/** Raw data by column; an empty cell is a missing value. */
public record DataFile(List<CSVRecord> lines) {

  public int size() {
    return lines.size();
  }

  public boolean has(String column) {
    return !lines.isEmpty() && lines.get(0).isMapped(column);
  }

  /** A column as text; {@code env} is site and year where there is no such column. */
  public List<String> text(String column) {
    if (column.equals("env") && !has("env") && has("site") && has("year")) {
      return lines.stream().map(line -> line.get("site") + "_" + line.get("year")).toList();
    }
    var values = new ArrayList<String>(lines.size());
    for (CSVRecord line : lines) {
      values.add(line.get(column));
    }
    return values;
  }

  /** A column as numbers; NaN where the cell is empty. */
  public double[] numbers(String column) {
    return lines.stream().mapToDouble(line -> number(line.get(column))).toArray();
  }

  private static double number(String cell) {
    return cell.isEmpty() || cell.equals("NA") ? Double.NaN : Double.parseDouble(cell);
  }
}
