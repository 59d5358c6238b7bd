package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.observation.NoneBecause;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Recorder;

/** What was read off plants, trays and plots. */
@Component
class ObservationSheet extends Sheet {

  private static final Column<String> UNIT =
      Column.code("unit", Known.UNIT, "label of the position, tray, lot, plant or plot").key();
  private static final Column<String> TRAIT = Column.text("trait", 20, "the trait's code").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the look").key();
  private static final Column<String> VALUE =
      Column.text("value", 200, "in the trait's own unit; a day as 2025-04-03");
  private static final Column<NoneBecause> NONE_BECAUSE =
      Column.choice("none_because", NoneBecause.class, "why there is no value");
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,6})?");

  private final Observations observations;
  private final Traits traits;
  private final JdbcTemplate jdbc;
  private final Recorder recorder;

  ObservationSheet(Observations observations, Traits traits, JdbcTemplate jdbc, Recorder recorder) {
    super(65, "observations", UNIT, TRAIT, ON, VALUE, NONE_BECAUSE, BY, NOTE);
    this.observations = observations;
    this.traits = traits;
    this.jdbc = jdbc;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    CropTraits known = new CropTraits(traits.findAll());
    Map<UUID, UUID> crops = cropsOfUnits();
    rows.each(
        row -> {
          UUID unit = row.id(UNIT);
          Trait trait = known.find(crops.get(unit), row, TRAIT);
          observations.save(
              new Observation(
                  unit,
                  trait,
                  row.the(ON),
                  reading(row, trait),
                  row.maybe(NOTE),
                  recorder.by(row.id(BY))));
        });
  }

  /** A unit may change its accession, never its crop. */
  private Map<UUID, UUID> cropsOfUnits() {
    Map<UUID, UUID> crops = new HashMap<>();
    jdbc.query(
        """
        select distinct h.unit_id, a.crop_id
        from holding h join accession a on a.id = h.accession_id
        """,
        row -> {
          crops.put(row.getObject(1, UUID.class), row.getObject(2, UUID.class));
        });
    return crops;
  }

  private static Reading reading(Row row, Trait trait) {
    @Nullable String value = row.maybe(VALUE);
    @Nullable NoneBecause because = row.maybe(NONE_BECAUSE);
    if ((value == null) == (because == null)) {
      throw row.refused(VALUE, "Fill either value or none_because, not both and not neither.");
    }
    if (value == null) {
      return Reading.none(because);
    }
    return switch (trait.kind()) {
      case MEASUREMENT, SCORE, COUNT -> Reading.of(number(row, value));
      case DATE -> Reading.of(day(row, value));
      case COLOUR, TEXT -> Reading.of(value);
    };
  }

  private static BigDecimal number(Row row, String value) {
    if (!NUMBER.matcher(value).matches()) {
      throw row.refused(VALUE, "Write a number with a decimal point, for example 1.5.");
    }
    return new BigDecimal(value);
  }

  private static LocalDate day(Row row, String value) {
    try {
      return LocalDate.parse(value);
    } catch (DateTimeException unread) {
      throw row.refused(VALUE, "Write a day as year-month-day, for example 2025-04-03.");
    }
  }

  @Override
  protected String query() {
    return """
        select u.label, t.code, o.on_date,
               case when o.number_value is not null
                    then rtrim(rtrim(cast(o.number_value as varchar(40)), '0'), '.')
                    else coalesce(cast(o.date_value as varchar(10)), o.text_value) end,
               o.none_because, w.initials, o.note
        from observation o
          join unit u on u.id = o.unit_id
          join trait t on t.id = o.trait_id
          left join person w on w.id = o.person_id
        where not exists (select 1 from observation n where n.supersedes_id = o.id)
        order by o.id
        """;
  }
}
