package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.Instant;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.house.HouseLog;
import trialwood.house.Houses;
import trialwood.house.NewReading;

/** What was read off in the houses. */
@Component
class HouseReadingSheet extends Sheet {

  private static final Column<String> HOUSE =
      Column.code("house", Known.HOUSE, "where it was read").key();
  private static final Column<Instant> READ = Column.moment("read_at", "when").key();
  private static final Column<BigDecimal> AIR = Column.decimal("air_celsius", 3, 1, "air, °C");
  private static final Column<BigDecimal> MEDIUM =
      Column.decimal("medium_celsius", 3, 1, "medium in tray or pot, °C");
  private static final Column<Integer> HUMIDITY = Column.count("humidity", "relative, %");
  private static final Column<Integer> SHADE = Column.count("shade", "of the full light, %");
  private static final Column<Integer> MIST_ON =
      Column.count("mist_seconds", "seconds that the mist runs");
  private static final Column<Integer> MIST_EVERY =
      Column.count("mist_interval_seconds", "seconds from one start to the next");
  private static final Column<String> NOTE = Column.note();
  private static final Column<String> BY = Column.by();

  private final HouseLog log;
  private final Houses houses;

  HouseReadingSheet(HouseLog log, Houses houses) {
    super(
        14,
        "house-readings",
        HOUSE,
        READ,
        AIR,
        MEDIUM,
        HUMIDITY,
        SHADE,
        MIST_ON,
        MIST_EVERY,
        NOTE,
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
            log.reading(
                houses.getReferenceById(row.id(HOUSE)),
                reading(row),
                CheckedColumns.of(row),
                null,
                row.id(BY)));
  }

  private static NewReading reading(Row row) {
    return new NewReading(
        row.the(READ),
        row.maybe(AIR),
        row.maybe(MEDIUM),
        row.maybe(HUMIDITY),
        row.maybe(SHADE),
        row.maybe(MIST_ON),
        row.maybe(MIST_EVERY),
        row.maybe(NOTE));
  }

  @Override
  protected String query() {
    return """
        select h.name, r.read_at, r.air_celsius, r.medium_celsius, r.humidity, r.shade, r.mist_seconds, r.mist_interval_seconds,
               r.note, w.initials, r.asked, r.checked
        from house_reading r
          join house h on h.id = r.house_id
          left join person w on w.id = r.person_id
        where not exists (select 1 from house_reading n where n.supersedes_id = r.id)
        order by r.id
        """;
  }
}
