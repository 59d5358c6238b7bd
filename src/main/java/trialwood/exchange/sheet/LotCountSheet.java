package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.LotRecords;
import trialwood.container.NewCount;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The counts of lots. */
@Component
class LotCountSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the count").key();
  private static final Column<Integer> ALIVE = Column.count("alive", "plants alive").key();
  private static final Column<Integer> SALEABLE =
      Column.count("saleable", "of those alive; empty when nobody graded them").telling();
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private final LotRecords records;

  LotCountSheet(LotRecords records) {
    super(44, "lot-counts", LOT, ON, ALIVE, SALEABLE, BY, NOTE);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.count(
                row.id(LOT),
                new NewCount(
                    row.the(ON),
                    row.the(ALIVE),
                    row.maybe(SALEABLE),
                    row.maybe(NOTE),
                    row.id(BY))));
  }

  @Override
  protected String query() {
    return """
        select u.label, c.on_date, c.alive, c.saleable, w.initials, c.note
        from lot_count c
          join unit u on u.id = c.lot_id
          left join person w on w.id = c.person_id
        where not exists (select 1 from lot_count n where n.supersedes_id = c.id)
        order by c.id
        """;
  }
}
