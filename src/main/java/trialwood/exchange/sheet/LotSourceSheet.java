package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.container.NewLot;
import trialwood.container.Potting;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** Which trays or lots the plants of a lot came from. */
@Component
class LotSourceSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<String> SOURCE =
      Column.code("source", Known.UNIT, "label of the tray, or of the lot in smaller pots").key();
  private static final Column<Integer> NUMBER =
      Column.count("number", "plants that came from it").required();

  private final Potting potting;

  LotSourceSheet(Potting potting) {
    super(41, "lot-sources", LOT, SOURCE, NUMBER);
    this.potting = potting;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> potting.take(row.id(LOT), new NewLot.Taken(row.id(SOURCE), row.the(NUMBER))));
  }

  @Override
  protected String query() {
    return """
        select u.label, s.label, l.number
        from lot_source l join unit u on u.id = l.lot_id join unit s on s.id = l.source_id
        order by l.id
        """;
  }
}
