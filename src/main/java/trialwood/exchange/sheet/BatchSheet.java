package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.Batch;
import trialwood.propagation.Sticking;
import trialwood.propagation.Treatment;

/** The batches of each run. */
@Component
class BatchSheet extends Sheet {

  private static final Column<String> BATCH = Column.text("batch", 40, "its code").key();
  private static final Column<String> RUN = Column.code("run", Known.RUN, "its run").required();
  private static final Column<Batch.Source> SOURCE =
      Column.choice("source", Batch.Source.class, "what the cuttings were taken from").required();
  private static final Column<String> WOUNDING =
      Column.text("wounding", 40, "where it differs from the run");
  private static final Column<String> HORMONE =
      Column.text("hormone", 40, "where it differs from the run");
  private static final Column<String> FORM =
      Column.text("form", 40, "where it differs from the run");
  private static final Column<Integer> PPM = Column.count("ppm", "where it differs from the run");
  private static final Column<String> NOTE = Column.note();
  private static final Column<LocalDate> SOLUTION_MADE_ON =
      Column.day("solution_made_on", "where it differs from the run").later();
  private static final Column<String> SOURCE_UNIT =
      Column.code("source_unit", Known.UNIT, "the very plant, if it is known").later();
  private static final Column<String> ASKED =
      Column.text("asked", 2000, "what was unusual and was asked about").later();
  private static final Column<String> CHECKED = Column.text("checked", 300, "the answer").later();

  private final Sticking sticking;

  BatchSheet(Sticking sticking) {
    super(
        31,
        "batches",
        BATCH,
        RUN,
        SOURCE,
        WOUNDING,
        HORMONE,
        FORM,
        PPM,
        NOTE,
        SOLUTION_MADE_ON,
        SOURCE_UNIT,
        ASKED,
        CHECKED);
    this.sticking = sticking;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            sticking.batch(
                new Batch(
                    row.id(RUN),
                    row.the(BATCH),
                    row.the(SOURCE),
                    row.maybeId(SOURCE_UNIT),
                    treatment(row),
                    row.maybe(NOTE),
                    Answers.of(row, ASKED, CHECKED))));
  }

  private static @Nullable Treatment treatment(Row row) {
    boolean asTheRun =
        Stream.of(WOUNDING, HORMONE, FORM, PPM, SOLUTION_MADE_ON)
            .map(row::maybe)
            .allMatch(Objects::isNull);
    return asTheRun
        ? null
        : new Treatment(
            row.maybe(WOUNDING),
            row.maybe(HORMONE),
            row.maybe(FORM),
            row.maybe(PPM),
            row.maybe(SOLUTION_MADE_ON));
  }

  @Override
  protected String query() {
    return """
        select b.code, r.code, b.source, b.wounding, b.hormone, b.form, b.ppm, b.note,
               b.solution_made_on, u.label, b.asked, b.checked
        from batch b
          join sticking_run r on r.id = b.run_id
          left join unit u on u.id = b.source_unit_id
        order by b.id
        """;
  }
}
