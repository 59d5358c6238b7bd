package trialwood.exchange;

import java.util.List;
import java.util.Locale;

/**
 * One table that comes in and goes out: its columns, what is done with its rows, and the query that
 * gives the same columns back.
 */
public abstract class Sheet {

  private final int place;
  private final String name;
  private final List<Column<?>> columns;

  /**
   * @param place in the order of loading: a sheet names only what earlier ones hold
   */
  protected Sheet(int place, String name, Column<?>... columns) {
    this.place = place;
    this.name = name;
    this.columns = List.of(columns);
  }

  /** Stores what the rows say, through the same constructors and services as the forms. */
  protected abstract void apply(Rows rows);

  /** Selects the sheet's columns in their order; rows in the order in which they can come back. */
  protected abstract String query();

  public int place() {
    return place;
  }

  public String name() {
    return name;
  }

  public List<Column<?>> columns() {
    return columns;
  }

  /** Its file in a folder that holds all sheets. */
  public String fileName() {
    return "%02d-%s.csv".formatted(place, name);
  }

  /** The column that a rule speaks of, by the name of its form field; empty when there is none. */
  String columnOf(String field) {
    String snake = field.replaceAll("([a-z])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
    return columns.stream().map(Column::name).filter(snake::equals).findFirst().orElse("");
  }
}
