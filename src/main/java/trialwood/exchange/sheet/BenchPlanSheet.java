package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.BenchPlan;
import trialwood.propagation.BenchPlans;
import trialwood.propagation.PlannedPlace;
import trialwood.propagation.PlannedPlaces;
import trialwood.record.Recorder;

/** The bench plans, place by place. */
@Component
class BenchPlanSheet extends Sheet {

  private static final Column<String> RUN = Column.code("run", Known.RUN, "its run").key();
  private static final Column<Integer> BLOCK = Column.count("block", "block, from 1").key();
  private static final Column<Integer> PLACE =
      Column.count("place", "place along the block's bench").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "what stands there").required();
  private static final Column<Integer> NTH =
      Column.count("nth", "which of its batches in the run; 1 unless it is stuck in two ways")
          .required();
  private static final Column<Integer> SEED =
      Column.count("seed", "the number the whole plan was drawn from").required();

  private final BenchPlans plans;
  private final PlannedPlaces places;
  private final Recorder recorder;

  BenchPlanSheet(BenchPlans plans, PlannedPlaces places, Recorder recorder) {
    super(39, "bench-plans", RUN, BLOCK, PLACE, ACCESSION, NTH, SEED);
    this.plans = plans;
    this.places = places;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row -> {
          if (!plans.existsById(row.id(RUN))) {
            plans.save(new BenchPlan(row.id(RUN), row.the(SEED), recorder.by(null)));
          }
          places.save(
              new PlannedPlace(
                  row.id(RUN), row.the(BLOCK), row.the(PLACE), row.id(ACCESSION), row.the(NTH)));
        });
  }

  @Override
  protected String query() {
    return """
        select r.code, p.block, p.place, a.code, p.nth, d.seed
        from planned_place p
          join bench_plan d on d.run_id = p.run_id
          join sticking_run r on r.id = p.run_id
          join accession a on a.id = p.accession_id
        order by p.id
        """;
  }
}
