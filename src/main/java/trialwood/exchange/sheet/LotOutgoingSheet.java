package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.LotRecords;
import trialwood.container.NewOutgoing;
import trialwood.container.Way;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/**
 * What left the lots alive, or was destroyed on purpose. A row has no code of its own: it is told
 * from others by all that it says.
 */
@Component
class LotOutgoingSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day they left").key();
  private static final Column<Integer> NUMBER = Column.count("number", "plants").key();
  private static final Column<Way> WAY = Column.choice("way", Way.class, "how they left").key();
  private static final Column<String> TO_WHOM =
      Column.text("to_whom", 120, "who has them now").telling();
  private static final Column<String> AGREEMENT =
      Column.text("agreement", 60, "number or name of the paper they went under").telling();
  private static final Column<String> PURPOSE = Column.text("purpose", 120, "what for").telling();
  private static final Column<String> BY = Column.by();

  private final LotRecords records;

  LotOutgoingSheet(LotRecords records) {
    super(43, "lot-outgoings", LOT, ON, NUMBER, WAY, TO_WHOM, AGREEMENT, PURPOSE, BY);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> records.letGo(row.id(LOT), outgoing(row)));
  }

  private static NewOutgoing outgoing(Row row) {
    return new NewOutgoing(
        row.the(ON),
        row.the(NUMBER),
        row.the(WAY),
        row.maybe(TO_WHOM),
        row.maybe(AGREEMENT),
        row.maybe(PURPOSE),
        row.id(BY));
  }

  @Override
  protected String query() {
    return """
        select u.label, o.on_date, o.number, o.way, o.to_whom, o.agreement, o.purpose, w.initials
        from lot_outgoing o
          join unit u on u.id = o.lot_id
          left join person w on w.id = o.person_id
        where not exists (select 1 from lot_outgoing n where n.supersedes_id = o.id)
        order by o.id
        """;
  }
}
