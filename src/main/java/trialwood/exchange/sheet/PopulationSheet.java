package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.field.Population;
import trialwood.field.Populations;

/** The planted blocks of seedlings. */
@Component
class PopulationSheet extends Sheet {

  private static final Column<String> POPULATION =
      Column.text("population", 20, "short code, such as P18").key();
  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").required();
  private static final Column<String> NAME =
      Column.text("name", 80, "what people call it").required();
  private static final Column<String> SITE =
      Column.code("site", Known.SITE, "where it is planted").required();
  private static final Column<LocalDate> PLANTED_ON =
      Column.past("planted_on", "last day of planting").required();
  private static final Column<Integer> ROWS = Column.count("rows", "number of rows").required();
  private static final Column<Integer> POSITIONS_PER_ROW =
      Column.count("positions_per_row", "planting slots in a row, living or not").required();
  private static final Column<Integer> IN_ROW_MM =
      Column.count("in_row_mm", "spacing in the row, mm").required();
  private static final Column<Integer> BETWEEN_ROWS_MM =
      Column.count("between_rows_mm", "spacing between rows, mm").required();
  private static final Column<String> NOTE = Column.note();

  private final Populations populations;

  PopulationSheet(Populations populations) {
    super(
        20,
        "populations",
        POPULATION,
        CROP,
        NAME,
        SITE,
        PLANTED_ON,
        ROWS,
        POSITIONS_PER_ROW,
        IN_ROW_MM,
        BETWEEN_ROWS_MM,
        NOTE);
    this.populations = populations;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            populations.save(
                new Population(
                    row.the(POPULATION),
                    row.id(CROP),
                    row.id(SITE),
                    row.the(NAME),
                    row.the(PLANTED_ON),
                    row.the(ROWS),
                    row.the(POSITIONS_PER_ROW),
                    row.the(IN_ROW_MM),
                    row.the(BETWEEN_ROWS_MM),
                    row.maybe(NOTE))));
  }

  @Override
  protected String query() {
    return """
        select p.code, c.code, p.name, s.code, p.planted_on, p.row_count, p.positions_per_row,
               p.in_row_mm, p.between_rows_mm, p.note
        from population p join crop c on c.id = p.crop_id join site s on s.id = p.site_id
        order by p.id
        """;
  }
}
