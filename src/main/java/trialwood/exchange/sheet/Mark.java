package trialwood.exchange.sheet;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.exchange.Column;
import trialwood.exchange.Row;

/** Reads the mark that records of one act bear. */
final class Mark {

  private Mark() {}

  /**
   * @throws trialwood.record.Refused when a cell is filled and is no UUID
   */
  static @Nullable UUID of(Row row, Column<String> column) {
    String cell = row.maybe(column);
    try {
      return cell == null ? null : UUID.fromString(cell);
    } catch (IllegalArgumentException unreadable) {
      throw row.refused(column, "A mark is a UUID: 8-4-4-4-12 figures and letters a to f.");
    }
  }
}
