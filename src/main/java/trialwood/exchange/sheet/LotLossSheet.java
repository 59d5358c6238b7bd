package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.LotRecords;
import trialwood.container.NewLoss;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** What died in the lots. */
@Component
class LotLossSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was found").key();
  private static final Column<Integer> NUMBER = Column.count("number", "plants lost").required();
  private static final Column<String> REASON =
      Column.text("reason", 300, "what killed them, as far as it shows").key();
  private static final Column<String> BY = Column.by();

  private final LotRecords records;

  LotLossSheet(LotRecords records) {
    super(42, "lot-losses", LOT, ON, NUMBER, REASON, BY);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.lose(
                row.id(LOT),
                new NewLoss(row.the(ON), row.the(NUMBER), row.the(REASON), row.id(BY))));
  }

  @Override
  protected String query() {
    return """
        select u.label, l.on_date, l.number, l.reason, w.initials
        from lot_loss l
          join unit u on u.id = l.lot_id
          left join person w on w.id = l.person_id
        where not exists (select 1 from lot_loss n where n.supersedes_id = l.id)
        order by l.id
        """;
  }
}
