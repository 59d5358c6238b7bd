package trialwood.propagation;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Problem;
import trialwood.record.Refused;

/** A sitting at the bench: batch after batch into one run, each tray to its place on the plan. */
@Service
public class StickingSession {

  /** Letters behind the code of a second, third … batch of one accession; O looks like a zero. */
  private static final String FURTHER = "bcdefghijklmn";

  private final Sticking sticking;
  private final Batches batches;
  private final BenchPlans plans;
  private final PlannedPlaces places;
  private final SourcePlant sourcePlant;
  private final SessionLists lists;

  StickingSession(
      Sticking sticking,
      Batches batches,
      BenchPlans plans,
      PlannedPlaces places,
      SourcePlant sourcePlant,
      SessionLists lists) {
    this.sticking = sticking;
    this.batches = batches;
    this.plans = plans;
    this.places = places;
    this.sourcePlant = sourcePlant;
    this.lists = lists;
  }

  /**
   * What has to be answered before the batch is stored.
   *
   * @throws Refused when its cuttings cannot be taken from that plant
   */
  @Transactional(readOnly = true)
  public List<Problem> unusual(StickingRun run, NewBatch batch) {
    sourcePlant.refuseIfNotToBeCut(batch);
    return Stream.of(
            batch.unusual(run),
            sourcePlant.unusual(batch),
            unplaced(run, batch, placesOf(run, batch)))
        .flatMap(List::stream)
        .toList();
  }

  private List<Problem> unplaced(StickingRun run, NewBatch batch, List<PlannedPlace> planned) {
    if (plans.existsById(id(run))) {
      int without = batch.stuck().size() - planned.size();
      return new Unusual()
          .ask(
              without > 0,
              "accession",
              without == batch.stuck().size()
                  ? "The bench plan has no place left for %s: where its trays stand is not drawn by lot."
                      .formatted(batch.accession().code())
                  : "The bench plan has %d places for this batch: the other trays are not placed by lot."
                      .formatted(planned.size()))
          .list();
    }
    boolean askedBefore = lists.batches(run).stream().anyMatch(before -> before.unplaced() > 0);
    return new Unusual()
        .ask(
            !askedBefore,
            "accession",
            "This run has no bench plan: where the trays stand is not drawn by lot.")
        .list();
  }

  /**
   * Sticks a batch: its trays are numbered, and each goes to its place on the plan, the first to
   * block 1.
   *
   * @param checked what was asked about it, and the answer
   * @throws Refused when the batch or one of its trays cannot be
   */
  @Transactional
  public Batch stick(StickingRun run, NewBatch said, @Nullable Checked checked) {
    Check.that()
        .holds(
            !said.stuck().isEmpty(), "rows[0].stuck", "Type how many were stuck in the first tray.")
        .orRefuse();
    List<PlannedPlace> planned = placesOf(run, said);
    boolean drawn = plans.existsById(id(run));
    Batch batch =
        sticking.batch(
            new Batch(
                id(run),
                freeCode(run, said),
                said.source(),
                said.plant() == null ? null : said.plant().id(),
                said.treatment(),
                said.note(),
                checked));
    for (int nth = 1; nth <= said.stuck().size(); nth++) {
      PlannedPlace place = nth <= planned.size() ? planned.get(nth - 1) : null;
      String block = drawn && place == null ? null : String.valueOf(nth);
      stick(run, batch, said, nth, block, place == null ? null : String.valueOf(place.place()));
    }
    return batch;
  }

  private void stick(
      StickingRun run,
      Batch batch,
      NewBatch said,
      int nth,
      @Nullable String block,
      @Nullable String place) {
    try {
      sticking.tray(
          run,
          batch,
          new NewTray(
              batch.code() + "-" + nth,
              Objects.requireNonNull(said.accession().id()),
              said.cells(),
              said.on(),
              said.stuck().get(nth - 1),
              block,
              place,
              said.personId()));
    } catch (Refused refused) {
      throw new Refused(refused.problems().stream().map(it -> ofTray(it, nth)).toList());
    }
  }

  /** A problem with what was stuck belongs to the tray's own box. */
  private static Problem ofTray(Problem problem, int nth) {
    return switch (problem.field()) {
      case "stuck" -> new Problem("rows[%d].stuck".formatted(nth - 1), problem.sentence());
      case "stuck_on" -> new Problem("on", problem.sentence());
      default -> problem;
    };
  }

  private List<PlannedPlace> placesOf(StickingRun run, NewBatch batch) {
    UUID whose = Objects.requireNonNull(batch.accession().id());
    long before =
        lists.batches(run).stream().filter(other -> other.accessionId().equals(whose)).count();
    return places.findByRunIdAndAccessionIdAndNthOrderByBlock(
        id(run), whose, Math.toIntExact(before) + 1);
  }

  private String freeCode(StickingRun run, NewBatch said) {
    String first = run.code() + "-" + said.accession().code();
    return Stream.concat(
            Stream.of(first), FURTHER.chars().mapToObj(letter -> first + (char) letter))
        .filter(code -> batches.findByCode(code).isEmpty())
        .findFirst()
        .orElseThrow(
            () ->
                new Refused(
                    "accession",
                    "%s was stuck 14 times in this run. Set up another run."
                        .formatted(said.accession().code())));
  }

  private static UUID id(StickingRun run) {
    return Objects.requireNonNull(run.id());
  }
}
