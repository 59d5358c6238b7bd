package trialwood.exchange.sheet;

import org.jspecify.annotations.Nullable;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.record.Checked;

/** The two columns of sheets whose records may be unusual: what was asked, and what was found. */
final class CheckedColumns {

  static final Column<String> ASKED =
      Column.text("asked", 2000, "what was unusual and asked about").later();
  static final Column<String> CHECKED =
      Column.text("checked", 300, "what was found on checking; empty where nobody checked").later();

  private CheckedColumns() {}

  static @Nullable Checked of(Row row) {
    String checked = row.maybe(CHECKED);
    return checked == null ? null : new Checked(row.orElse(ASKED, ""), checked);
  }
}
