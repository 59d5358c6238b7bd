package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.NewTakenOut;
import trialwood.propagation.TakenOut;
import trialwood.propagation.TrayRecords;

/** What left the trays before their final counts. */
@Component
class TakenOutSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day").key();
  private static final Column<Integer> NUMBER =
      Column.count("number", "cuttings taken out").required();
  private static final Column<Boolean> ROOTED =
      Column.yesNo("rooted", "whether they had roots").key();
  private static final Column<TakenOut.Fate> FATE =
      Column.choice("fate", TakenOut.Fate.class, "what became of them").key();
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private final TrayRecords records;

  TakenOutSheet(TrayRecords records) {
    super(35, "taken-out", TRAY, ON, NUMBER, ROOTED, FATE, BY, NOTE);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.takenOut(
                row.id(TRAY),
                new NewTakenOut(
                    row.the(ON), row.the(NUMBER), row.the(ROOTED), row.the(FATE), row.maybe(NOTE)),
                row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select u.label, t.on_date, t.number, t.rooted, t.fate, w.initials, t.note
        from taken_out t
          join unit u on u.id = t.tray_id
          left join person w on w.id = t.person_id
        where not exists (select 1 from taken_out n where n.supersedes_id = t.id)
        order by t.id
        """;
  }
}
