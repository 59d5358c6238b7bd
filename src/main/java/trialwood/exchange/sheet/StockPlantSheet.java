package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.stock.NewStockPlant;
import trialwood.stock.StockRecords;

/** The plants kept for cuttings. */
@Component
class StockPlantSheet extends Sheet {

  private static final Column<String> PLANT = Column.text("plant", 60, "its label").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "whose it is from that day").required();
  private static final Column<Integer> NUMBER =
      Column.count("number", "one living plant of an accession bears it").required();
  private static final Column<LocalDate> SINCE =
      Column.past("since", "the day from which it is kept for cuttings").required();
  private static final Column<String> PLACE =
      Column.text("place", 80, "where it stood at first").required();
  private static final Column<String> BATCH =
      Column.code("batch", Known.BATCH, "the batch it was rooted in");
  private static final Column<String> SOURCE =
      Column.code("source_unit", Known.UNIT, "the lot or plant it was, where no batch is named");
  private static final Column<String> NOTE = Column.note();
  private static final Column<String> BY = Column.by();

  private final StockRecords records;

  StockPlantSheet(StockRecords records) {
    super(49, "stock-plants", PLANT, ACCESSION, NUMBER, SINCE, PLACE, BATCH, SOURCE, NOTE, BY);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> records.keep(plant(row)));
  }

  private static NewStockPlant plant(Row row) {
    return new NewStockPlant(
        row.the(PLANT),
        row.id(ACCESSION),
        row.the(NUMBER),
        row.the(SINCE),
        row.the(PLACE),
        row.maybeId(BATCH),
        row.maybeId(SOURCE),
        row.maybe(NOTE),
        row.id(BY));
  }

  /** The accession of its first tie; later ones are ties. */
  @Override
  protected String query() {
    return """
        select u.label, a.code, p.number, p.since_date, p.place, b.code, o.label, p.note, w.initials
        from stock_plant p
          join unit u on u.id = p.unit_id
          join tie t on t.unit_id = p.unit_id
          join accession a on a.id = t.accession_id
          left join batch b on b.id = p.origin_batch_id
          left join unit o on o.id = p.origin_unit_id
          left join person w on w.id = p.person_id
        where not exists (select 1 from tie e where e.unit_id = p.unit_id and e.id < t.id)
        order by p.since_date, p.recorded_at, p.unit_id
        """;
  }
}
