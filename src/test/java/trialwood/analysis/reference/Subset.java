package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/** Lines and levels of the data that a row asks for. */
final class Subset {

  private Subset() {}

  /** Which lines of the data belong to the row's subset, written {@code column:level}. */
  static IntPredicate of(Row row) {
    if (!row.has("subset")) {
      return line -> true;
    }
    String[] parts = row.input("subset").split(":", 2);
    return at(row, parts[0], parts[1]);
  }

  static IntPredicate at(Row row, String column, String level) {
    List<String> levels = row.data().text(column);
    return line -> levels.get(line).equals(level);
  }

  /** The levels of the row's factor, the baseline first if there is one. */
  static List<String> levels(Row row) {
    var levels =
        new ArrayList<>(
            row.data().text(row.input("factor")).stream()
                .filter(level -> !level.isEmpty())
                .distinct()
                .sorted()
                .toList());
    if (row.has("baseline") && levels.remove(row.input("baseline"))) {
      levels.add(0, row.input("baseline"));
    }
    return levels;
  }
}
