package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.trial.NewTrial;
import trialwood.trial.TrialPlanting;

/** The trials. */
@Component
class TrialSheet extends Sheet {

  private static final Column<String> TRIAL = Column.text("trial", 20, "its code").key();
  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").required();
  private static final Column<String> NAME =
      Column.text("name", 80, "what people call it").required();
  private static final Column<String> OBJECTIVE =
      Column.text("objective", 300, "the question it is to answer");
  private static final Column<Integer> SEED =
      Column.count("seed", "what its layout was drawn from; empty when laid out elsewhere");
  private static final Column<Integer> BLOCKS =
      Column.count("blocks", "blocks at each site").required();
  private static final Column<Integer> PLANTS_PER_PLOT =
      Column.count("plants_per_plot", "plants in a plot").required();
  private static final Column<Integer> SPACING_MM =
      Column.count("spacing_mm", "between plants, mm");

  private final TrialPlanting planting;

  TrialSheet(TrialPlanting planting) {
    super(60, "trials", TRIAL, CROP, NAME, OBJECTIVE, SEED, BLOCKS, PLANTS_PER_PLOT, SPACING_MM);
    this.planting = planting;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> planting.plan(trial(row)));
  }

  private static NewTrial trial(Row row) {
    Integer seed = row.maybe(SEED);
    return new NewTrial(
        row.id(CROP),
        row.the(TRIAL),
        row.the(NAME),
        row.maybe(OBJECTIVE),
        seed == null ? null : seed.longValue(),
        row.the(BLOCKS),
        row.the(PLANTS_PER_PLOT),
        row.maybe(SPACING_MM));
  }

  @Override
  protected String query() {
    return """
        select t.code, c.code, t.name, t.objective, t.seed, t.blocks, t.plants_per_plot,
               t.spacing_mm
        from trial t join crop c on c.id = t.crop_id
        order by t.id
        """;
  }
}
