package trialwood.exchange;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.record.Refused;

/** One row of a file, every cell read. */
public final class Row {

  private final int number;
  private final Map<String, String> cells;
  private final Map<String, Object> values;
  private final Codes codes;

  /**
   * @param number as a spreadsheet counts: the line of column names is row 1
   * @param cells as they stand in the file, by column
   * @param values as they were read, by column; blank cells are absent
   */
  Row(int number, Map<String, String> cells, Map<String, Object> values, Codes codes) {
    this.number = number;
    this.cells = cells;
    this.values = values;
    this.codes = codes;
  }

  /** The value of a required column. */
  public <T> T the(Column<T> column) {
    return Objects.requireNonNull(maybe(column), column.name());
  }

  /** The value of a column, if its cell is filled. */
  @SuppressWarnings("unchecked") // the column's own kind has read it
  public <T> @Nullable T maybe(Column<T> column) {
    return (T) values.get(column.name());
  }

  public <T> T orElse(Column<T> column, T otherwise) {
    return Objects.requireNonNullElse(maybe(column), otherwise);
  }

  /**
   * What the code in a required column stands for.
   *
   * @throws Refused when nothing on record has this code
   */
  public UUID id(Column<String> column) {
    return Objects.requireNonNull(maybeId(column), column.name());
  }

  /** What the code in a column stands for, if anything on record has it. */
  public Optional<UUID> known(Column<String> column) {
    return Optional.ofNullable(maybe(column))
        .flatMap(code -> codes.find(Objects.requireNonNull(column.known()), code));
  }

  /** What a code stands for, if its cell is filled. */
  public @Nullable UUID maybeId(Column<String> column) {
    String code = maybe(column);
    return code == null ? null : find(column, Objects.requireNonNull(column.known()), code);
  }

  /** What the codes in a cell stand for; none where it is empty. */
  public Set<UUID> ids(Column<List<String>> column) {
    Known known = Objects.requireNonNull(column.known());
    return orElse(column, List.of()).stream()
        .map(code -> find(column, known, code))
        .collect(Collectors.toUnmodifiableSet());
  }

  private UUID find(Column<?> column, Known known, String code) {
    return codes
        .find(known, code)
        .orElseThrow(() -> refused(column, "No %s on record has it.".formatted(known.word())));
  }

  /** A refusal of one cell of this row. */
  public Refused refused(Column<?> column, String sentence) {
    return new Refused(column.name(), sentence);
  }

  int number() {
    return number;
  }

  /** The cell as it stands in the file; empty where there is none. */
  String found(String column) {
    return cells.getOrDefault(column, "");
  }
}
