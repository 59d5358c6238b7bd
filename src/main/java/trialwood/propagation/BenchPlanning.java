package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.analysis.trial.CompleteBlocks;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.site.Bench;

/** Draws the bench plan of a run. */
@Service
public class BenchPlanning {

  private static final int MOST_BLOCKS = 20;

  private final BenchPlans plans;
  private final PlannedPlaces places;
  private final BenchBlocks blocks;
  private final TrayPlaces trayPlaces;
  private final BenchSpace space;
  private final Recorder recorder;
  private final JdbcClient jdbc;
  private final Clock clock;

  BenchPlanning(
      BenchPlans plans,
      PlannedPlaces places,
      BenchBlocks blocks,
      TrayPlaces trayPlaces,
      BenchSpace space,
      Recorder recorder,
      JdbcClient jdbc,
      Clock clock) {
    this.plans = plans;
    this.places = places;
    this.blocks = blocks;
    this.trayPlaces = trayPlaces;
    this.space = space;
    this.recorder = recorder;
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * Draws the plan: complete blocks, each in an order of its own. A plan may be drawn anew until
   * the first tray has been set by it.
   *
   * @throws Refused when the bench check is missing, the benches have no room, or trays stand by a
   *     plan already
   */
  @Transactional
  public void draw(StickingRun run, NewPlan plan, @Nullable UUID personId) {
    UUID runId = Objects.requireNonNull(run.id());
    refuseIfImpossible(run, plan);
    refuseIfTaken(plan);
    plans.findById(runId).ifPresent(plans::delete);
    places.deleteByRunId(runId);
    blocks.deleteByRunId(runId);
    plans.flush();
    plans.save(new BenchPlan(runId, plan.seed(), recorder.by(personId)));
    for (int block = 1; block <= plan.blocks(); block++) {
      UUID bench = Objects.requireNonNull(plan.benchOf(block).id());
      blocks.save(new BenchBlock(runId, String.valueOf(block), bench));
    }
    List<PlannedPlace> drawn = drawn(runId, plan);
    places.saveAll(drawn);
    setStuckTrays(runId, plan, drawn);
  }

  private record Stuck(UUID trayId, String block, UUID accessionId, int nth) {

    boolean belongsAt(PlannedPlace planned) {
      return block.equals(String.valueOf(planned.block()))
          && accessionId.equals(planned.accessionId())
          && nth == planned.nth();
    }
  }

  /** Trays that were stuck before there was a plan go to their places now. */
  private void setStuckTrays(UUID runId, NewPlan plan, List<PlannedPlace> drawn) {
    List<Stuck> stuck =
        jdbc.sql(
                """
                select t.unit_id as tray_id, t.block, h.accession_id,
                       dense_rank() over (partition by h.accession_id order by b.id) as nth
                from tray t
                join batch b on b.id = t.batch_id
                join holding h on h.unit_id = t.unit_id
                  and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
                where b.run_id = :run and t.block is not null
                """)
            .param("run", runId)
            .query(Stuck.class)
            .list();
    for (PlannedPlace planned : drawn) {
      stuck.stream()
          .filter(tray -> tray.belongsAt(planned))
          .findFirst()
          .ifPresent(tray -> set(tray.trayId(), plan.benchOf(planned.block()), planned.place()));
    }
  }

  private void set(UUID tray, Bench bench, int place) {
    UUID id = Objects.requireNonNull(bench.id());
    LocalDate today = LocalDate.now(clock);
    trayPlaces.save(
        new TrayPlace(tray, id, place, today, "set by the bench plan", recorder.by(null)));
  }

  /** The places that a plan's seed gives its entries. */
  static List<PlannedPlace> drawn(UUID runId, NewPlan plan) {
    List<Integer> nths = new ArrayList<>();
    Map<UUID, Integer> named = new HashMap<>();
    plan.entries()
        .forEach(
            entry -> nths.add(named.merge(Objects.requireNonNull(entry.id()), 1, Integer::sum)));
    List<List<Integer>> orders =
        CompleteBlocks.draw(plan.entries().size(), plan.blocks(), new Random(plan.seed()));
    List<PlannedPlace> drawn = new ArrayList<>();
    for (int block = 1; block <= plan.blocks(); block++) {
      int place = plan.startOf(block);
      for (int entry : orders.get(block - 1)) {
        UUID whose = Objects.requireNonNull(plan.entries().get(entry).id());
        drawn.add(new PlannedPlace(runId, block, place++, whose, nths.get(entry)));
      }
    }
    return drawn;
  }

  private void refuseIfImpossible(StickingRun run, NewPlan plan) {
    boolean hasCheck =
        plan.entries().stream().anyMatch(entry -> run.checkAccessionId().equals(entry.id()));
    Set<UUID> crops =
        plan.entries().stream().map(entry -> entry.cropId()).collect(Collectors.toSet());
    Check.that()
        .holds(hasCheck, "entries", "The bench check stands in every block: name it, too.")
        .holds(
            crops.equals(Set.of(run.cropId())),
            "entries",
            "An entry is of another crop than the run.")
        .holds(
            plan.blocks() >= 1 && plan.blocks() <= MOST_BLOCKS,
            "blocks",
            "A run stands in 1 to 20 blocks.")
        .holds(plan.firstPlace() >= 1, "firstPlace", "Places are numbered from 1.")
        .holds(
            plan.benches().size() == 1 || plan.benches().size() == plan.blocks(),
            "benches",
            "Pick one bench for all blocks, or one for each block.")
        .holds(
            !hasTraysInPlace(run),
            "entries",
            "Trays of this run stand in their places already. Move a tray by hand instead.")
        .orRefuse();
    for (Bench bench : plan.benches()) {
      Check.that()
          .holds(
              plan.lastPlace() <= bench.places(),
              "benches",
              "Bench %s has %d places; this plan needs place %d."
                  .formatted(bench.code(), bench.places(), plan.lastPlace()))
          .orRefuse();
    }
  }

  private void refuseIfTaken(NewPlan plan) {
    Set<UUID> benches = plan.benches().stream().map(Bench::id).collect(Collectors.toSet());
    space.on(LocalDate.now(clock)).stream()
        .filter(tray -> tray.benchId() != null && benches.contains(tray.benchId()))
        .filter(
            tray ->
                tray.placeNumber() >= plan.firstPlace() && tray.placeNumber() <= plan.lastPlace())
        .findFirst()
        .ifPresent(
            tray -> {
              throw new Refused(
                  "firstPlace",
                  "Tray %s of run %s stands on place %s. Begin behind it, or take another bench."
                      .formatted(tray.tray(), tray.run(), tray.place()));
            });
  }

  private boolean hasTraysInPlace(StickingRun run) {
    return jdbc.sql(
                """
                select count(*) from tray t join batch b on b.id = t.batch_id
                where b.run_id = :run
                  and (t.place is not null
                       or exists (select 1 from tray_place p where p.tray_id = t.unit_id))
                """)
            .param("run", run.id())
            .query(Integer.class)
            .single()
        > 0;
  }
}
