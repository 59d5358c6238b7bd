package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.TrayRecords;

/** Which trays do not count, or count again. */
@Component
class TrayRulingSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the ruling").key();
  private static final Column<Boolean> COUNTS =
      Column.yesNo("counts", "no makes the tray void, yes lets it count again").key();
  private static final Column<String> REASON =
      Column.text("reason", 300, "what happened to the tray").required();
  private static final Column<String> BY = Column.by();

  private final TrayRecords records;

  TrayRulingSheet(TrayRecords records) {
    super(33, "tray-rulings", TRAY, ON, COUNTS, REASON, BY);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.rule(row.id(TRAY), row.the(ON), row.the(COUNTS), row.the(REASON), row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select u.label, r.on_date, r.counts, r.reason, w.initials
        from tray_ruling r
          join unit u on u.id = r.tray_id
          left join person w on w.id = r.person_id
        order by r.id
        """;
  }
}
