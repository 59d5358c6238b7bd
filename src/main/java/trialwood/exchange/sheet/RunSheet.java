package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.Environment;
import trialwood.propagation.NewRun;
import trialwood.propagation.Sticking;
import trialwood.propagation.Treatment;

/** The sticking runs, each with its bench check. */
@Component
class RunSheet extends Sheet {

  private static final Column<String> RUN = Column.text("run", 30, "its code").key();
  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").required();
  private static final Column<LocalDate> FROM = Column.day("from", "first sticking day").required();
  private static final Column<LocalDate> TO = Column.day("to", "last sticking day").required();
  private static final Column<String> CHECK =
      Column.code("check", Known.ACCESSION, "the bench check that stands beside every batch")
          .required();
  private static final Column<String> BENCH = Column.text("bench", 60, "where it stands");
  private static final Column<String> MIST = Column.text("mist", 120, "the mist's rhythm");
  private static final Column<BigDecimal> BOTTOM_HEAT_C =
      Column.decimal("bottom_heat_c", 4, 1, "temperature of the medium, °C");
  private static final Column<String> CUTTING = Column.text("cutting", 60, "kind of cutting");
  private static final Column<Integer> LENGTH_MM =
      Column.count("length_mm", "length of a cutting, mm");
  private static final Column<String> WOUNDING =
      Column.text("wounding", 40, "how the base is wounded");
  private static final Column<String> HORMONE =
      Column.text("hormone", 40, "active ingredient; the label decides on its use");
  private static final Column<String> FORM =
      Column.text("form", 40, "how it is given: quick dip, talc");
  private static final Column<Integer> PPM =
      Column.count("ppm", "strength as dipped, parts per million; 0.3 % is 3000");
  private static final Column<Integer> DIP_S = Column.count("dip_s", "time in the dip, seconds");
  private static final Column<String> MEDIUM = Column.text("medium", 80, "what they are stuck in");
  private static final Column<String> CREW = Column.text("crew", 120, "who stuck");
  private static final Column<String> NOTE = Column.note();
  private static final Column<Integer> MIST_ON_S =
      Column.count("mist_on_s", "length of a burst of mist, seconds").later();
  private static final Column<BigDecimal> MIST_EVERY_MIN =
      Column.decimal("mist_every_min", 5, 1, "from one burst to the next, minutes").later();
  private static final Column<BigDecimal> AIR_C =
      Column.decimal("air_c", 4, 1, "air by day, °C").later();
  private static final Column<Integer> SHADE_PERCENT =
      Column.count("shade_percent", "light kept off, %").later();
  private static final Column<Integer> HUMIDITY_PERCENT =
      Column.count("humidity_percent", "relative humidity, %").later();
  private static final Column<LocalDate> SOLUTION_MADE_ON =
      Column.day("solution_made_on", "the day the hormone solution was mixed").later();
  private static final Column<String> ASKED =
      Column.text("asked", 2000, "what was unusual and was asked about").later();
  private static final Column<String> CHECKED = Column.text("checked", 300, "the answer").later();

  private final Sticking sticking;

  RunSheet(Sticking sticking) {
    super(
        30,
        "runs",
        RUN,
        CROP,
        FROM,
        TO,
        CHECK,
        BENCH,
        MIST,
        BOTTOM_HEAT_C,
        CUTTING,
        LENGTH_MM,
        WOUNDING,
        HORMONE,
        FORM,
        PPM,
        DIP_S,
        MEDIUM,
        CREW,
        NOTE,
        MIST_ON_S,
        MIST_EVERY_MIN,
        AIR_C,
        SHADE_PERCENT,
        HUMIDITY_PERCENT,
        SOLUTION_MADE_ON,
        ASKED,
        CHECKED);
    this.sticking = sticking;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> sticking.run(run(row), Answers.of(row, ASKED, CHECKED)));
  }

  private static NewRun run(Row row) {
    return new NewRun(
        row.the(RUN),
        row.id(CROP),
        row.the(FROM),
        row.the(TO),
        row.id(CHECK),
        row.maybe(CREW),
        row.maybe(BENCH),
        row.maybe(MIST),
        new Environment(
            row.maybe(MIST_ON_S),
            row.maybe(MIST_EVERY_MIN),
            row.maybe(AIR_C),
            row.maybe(SHADE_PERCENT),
            row.maybe(HUMIDITY_PERCENT)),
        row.maybe(BOTTOM_HEAT_C),
        row.maybe(CUTTING),
        row.maybe(LENGTH_MM),
        new Treatment(
            row.maybe(WOUNDING),
            row.maybe(HORMONE),
            row.maybe(FORM),
            row.maybe(PPM),
            row.maybe(SOLUTION_MADE_ON)),
        row.maybe(DIP_S),
        row.maybe(MEDIUM),
        row.maybe(NOTE));
  }

  @Override
  protected String query() {
    return """
        select r.code, c.code, r.from_date, r.to_date, a.code, r.bench, r.mist, r.bottom_heat_c,
               r.cutting, r.length_mm, r.wounding, r.hormone, r.form, r.ppm, r.dip_s, r.medium,
               r.crew, r.note, r.mist_on_s, r.mist_every_min, r.air_c, r.shade_percent,
               r.humidity_percent, r.solution_made_on, r.asked, r.checked
        from sticking_run r
          join crop c on c.id = r.crop_id
          join accession a on a.id = r.check_accession_id
        order by r.id
        """;
  }
}
