package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.site.Bench;
import trialwood.site.Benches;

/** The benches of the houses. */
@Component
class BenchSheet extends Sheet {

  private static final Column<String> BENCH =
      Column.text("bench", 20, "short code of the bench").key();
  private static final Column<String> NAME =
      Column.text("name", 80, "what people call it").required();
  private static final Column<String> HOUSE = Column.text("house", 80, "where it stands");
  private static final Column<Integer> PLACES =
      Column.count("places", "tray places, numbered along the bench").required();
  private static final Column<String> NOTE = Column.note();

  private final Benches benches;

  BenchSheet(Benches benches) {
    super(11, "benches", BENCH, NAME, HOUSE, PLACES, NOTE);
    this.benches = benches;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            benches.save(
                new Bench(
                    row.the(BENCH),
                    row.the(NAME),
                    row.maybe(HOUSE),
                    row.the(PLACES),
                    row.maybe(NOTE))));
  }

  @Override
  protected String query() {
    return "select code, name, house, places, note from bench order by id";
  }
}
