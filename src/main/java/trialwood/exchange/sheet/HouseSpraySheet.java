package trialwood.exchange.sheet;

import java.time.Instant;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.house.HouseLog;
import trialwood.house.Houses;
import trialwood.house.NewSpray;

/** What was sprayed in the houses. */
@Component
class HouseSpraySheet extends Sheet {

  private static final Column<String> HOUSE =
      Column.code("house", Known.HOUSE, "where it was applied").key();
  private static final Column<Instant> ENDED =
      Column.moment("ended_at", "when the last of it was applied").key();
  private static final Column<Integer> HOURS =
      Column.count("re_entry_hours", "re-entry interval on the label, hours; 0 where it gives none")
          .required();
  private static final Column<String> PRODUCT =
      Column.text("product", 120, "as on the label").key();
  private static final Column<String> RATE = Column.text("rate", 80, "as mixed");
  private static final Column<String> AREA = Column.text("area", 120, "what was treated").key();
  private static final Column<String> AGAINST = Column.text("against", 120, "against what");
  private static final Column<String> LICENCE =
      Column.text("licence", 60, "of who applied it, where local rules ask for one");
  private static final Column<String> BY = Column.by();

  private final HouseLog log;
  private final Houses houses;

  HouseSpraySheet(HouseLog log, Houses houses) {
    super(
        13,
        "house-sprays",
        HOUSE,
        ENDED,
        HOURS,
        PRODUCT,
        RATE,
        AREA,
        AGAINST,
        LICENCE,
        BY,
        CheckedColumns.ASKED,
        CheckedColumns.CHECKED);
    this.log = log;
    this.houses = houses;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            log.spray(
                houses.getReferenceById(row.id(HOUSE)),
                spray(row),
                CheckedColumns.of(row),
                null,
                row.id(BY)));
  }

  private static NewSpray spray(Row row) {
    return new NewSpray(
        row.the(ENDED),
        row.the(HOURS),
        row.the(PRODUCT),
        row.maybe(RATE),
        row.the(AREA),
        row.maybe(AGAINST),
        row.maybe(LICENCE));
  }

  @Override
  protected String query() {
    return """
        select h.name, s.ended_at, s.re_entry_hours, s.product, s.rate, s.area, s.reason, s.licence,
               w.initials, s.asked, s.checked
        from house_spray s
          join house h on h.id = s.house_id
          left join person w on w.id = s.person_id
        where not exists (select 1 from house_spray n where n.supersedes_id = s.id)
        order by s.id
        """;
  }
}
