package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.stock.NewStockEvent;
import trialwood.stock.StockEvent;
import trialwood.stock.StockRecords;

/** Moves, virus tests and deaths of stock plants. */
@Component
class StockEventSheet extends Sheet {

  private static final Column<String> PLANT = Column.code("plant", Known.STOCK, "its label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of it").key();
  private static final Column<StockEvent.Kind> KIND =
      Column.choice("kind", StockEvent.Kind.class, "what happened").key();
  private static final Column<String> PLACE =
      Column.text("place", 80, "where it stands now; moves must have it").telling();
  private static final Column<String> AGENT =
      Column.text("agent", 80, "what it was tested for; tests must have it").telling();
  private static final Column<StockEvent.Result> RESULT =
      Column.choice("result", StockEvent.Result.class, "what the test found");
  private static final Column<String> NOTE = Column.text("note", 300, "of a death what it died of");
  private static final Column<String> BY = Column.by();

  private final StockRecords records;

  StockEventSheet(StockRecords records) {
    super(50, "stock-events", PLANT, ON, KIND, PLACE, AGENT, RESULT, NOTE, BY);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.happened(
                row.id(PLANT),
                new NewStockEvent(
                    row.the(ON),
                    row.the(KIND),
                    row.maybe(PLACE),
                    row.maybe(AGENT),
                    row.maybe(RESULT),
                    row.maybe(NOTE),
                    row.id(BY))));
  }

  @Override
  protected String query() {
    return """
        select u.label, e.on_date, e.kind, e.place, e.agent, e.result, e.note, w.initials
        from stock_event e
          join unit u on u.id = e.stock_id
          left join person w on w.id = e.person_id
        where not exists (select 1 from stock_event n where n.supersedes_id = e.id)
        order by e.id
        """;
  }
}
