package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.candidate.CandidateMarks;
import trialwood.candidate.Candidates;
import trialwood.candidate.Standing;
import trialwood.record.Problem;
import trialwood.record.Refused;
import trialwood.unit.Unit;
import trialwood.web.Measures;

/** Whether the plant behind a batch may be cut, and what is asked about cutting it. */
@Component
class SourcePlant {

  /** Rest between two cuts of one ortet, days (common practice, no source). */
  private static final int REST_DAYS = 30;

  /** More than one plant gives in a day (common practice, no source). */
  private static final int MOST_FROM_ONE = 150;

  private static final UUID NO_PLANT = new UUID(0, 0);

  private final Candidates candidates;
  private final CandidateMarks marks;
  private final JdbcClient jdbc;

  SourcePlant(Candidates candidates, CandidateMarks marks, JdbcClient jdbc) {
    this.candidates = candidates;
    this.marks = marks;
    this.jdbc = jdbc;
  }

  /**
   * @throws Refused when the candidate was discarded, or the plant is another's, dead or infected
   *     by the record
   */
  void refuseIfNotToBeCut(NewBatch batch) {
    candidates
        .findById(whose(batch))
        .filter(candidate -> candidate.standing() == Standing.DISCARDED)
        .ifPresent(
            discarded -> {
              throw new Refused(
                  "accession",
                  "%s was discarded. The breeder can reopen it; until then it is not propagated."
                      .formatted(batch.accession().code()));
            });
    if (batch.plant() != null) {
      refuseIfAnothers(batch, batch.plant());
      refuseIfDead(batch, batch.plant());
      refuseIfInfected(batch, batch.plant());
    }
  }

  private void refuseIfAnothers(NewBatch batch, Unit plant) {
    Optional<String> whose =
        jdbc.sql(
                """
                select a.code from holding h join accession a on a.id = h.accession_id
                where h.unit_id = :unit and h.from_date <= :day and :day < h.until_date
                """)
            .param("unit", plant.id())
            .param("day", batch.on())
            .query(String.class)
            .optional();
    if (whose.filter(batch.accession().code()::equals).isEmpty()) {
      throw new Refused(
          "plant",
          whose
              .map(
                  code ->
                      "%s is a plant of %s on that day, not of %s."
                          .formatted(plant.label(), code, batch.accession().code()))
              .orElse("%s is nobody's plant on that day, by the record.".formatted(plant.label())));
    }
  }

  private void refuseIfDead(NewBatch batch, Unit plant) {
    jdbc.sql(
            """
            select min(dead.on_date) from (
              select o.on_date from observation o
              where o.unit_id = :unit and o.on_date <= :day and o.none_because = 'DEAD'
                and not exists (select 1 from observation s where s.supersedes_id = o.id)
              union all
              select e.on_date from stock_event e
              where e.stock_id = :unit and e.on_date <= :day and e.kind = 'DIED'
                and not exists (select 1 from stock_event s where s.supersedes_id = e.id)
            ) dead
            """)
        .param("unit", plant.id())
        .param("day", batch.on())
        .query(LocalDate.class)
        .optional()
        .ifPresent(
            dead -> {
              throw new Refused(
                  "plant",
                  "%s was recorded dead on %s. Take cuttings from another plant, or put its record right."
                      .formatted(plant.label(), Measures.day(dead)));
            });
  }

  private void refuseIfInfected(NewBatch batch, Unit plant) {
    jdbc.sql(
            """
            select min(e.on_date) from stock_event e
            where e.stock_id = :unit and e.on_date <= :day and e.result = 'POSITIVE'
              and not exists (select 1 from stock_event s where s.supersedes_id = e.id)
            """)
        .param("unit", plant.id())
        .param("day", batch.on())
        .query(LocalDate.class)
        .optional()
        .ifPresent(
            tested -> {
              throw new Refused(
                  "plant",
                  "%s tested positive on %s. Take no cuttings from it; take them from a plant that tested negative."
                      .formatted(plant.label(), Measures.day(tested)));
            });
  }

  /** What is unusual about cutting this plant. */
  List<Problem> unusual(NewBatch batch) {
    LocalDate before = batch.source() == Batch.Source.ORTET ? lastCut(batch) : null;
    int inAll = isOnePlant(batch) ? cutThatDay(batch) + batch.cuttings() : 0;
    return new Unusual()
        .ask(
            !marks.provisional(Set.of(whose(batch)), batch.on()).isEmpty(),
            "accession",
            "The identity of %s is provisional: nobody has confirmed it in flower."
                .formatted(batch.accession().code()))
        .ask(
            before != null,
            "source",
            "The ortet was cut on %s already, less than 30 days before."
                .formatted(Measures.day(before)))
        .ask(
            inAll > MOST_FROM_ONE,
            "source",
            "%d cuttings from one plant in a day: more than 150 strip it.".formatted(inAll))
        .list();
  }

  private @Nullable LocalDate lastCut(NewBatch batch) {
    return jdbc.sql(
            """
            select max(t.stuck_on)
            from tray t
            join batch b on b.id = t.batch_id and b.source = 'ORTET'
            join holding h on h.unit_id = t.unit_id and h.accession_id = :accession
              and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
            where t.stuck_on >= :from and t.stuck_on < :day
            """)
        .param("accession", whose(batch))
        .param("from", batch.on().minusDays(REST_DAYS))
        .param("day", batch.on())
        .query(LocalDate.class)
        .optional()
        .orElse(null);
  }

  private static boolean isOnePlant(NewBatch batch) {
    return batch.plant() != null || batch.source() == Batch.Source.ORTET;
  }

  private int cutThatDay(NewBatch batch) {
    return jdbc.sql(
            """
            select coalesce(sum(t.stuck), 0)
            from tray t
            join batch b on b.id = t.batch_id
            join holding h on h.unit_id = t.unit_id and h.accession_id = :accession
              and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
            where t.stuck_on = :day
              and (b.source_unit_id = :plant or (b.source = 'ORTET' and :source = 'ORTET'))
            """)
        .param("accession", whose(batch))
        .param("day", batch.on())
        .param("plant", batch.plant() == null ? NO_PLANT : batch.plant().id())
        .param("source", batch.source().name())
        .query(Integer.class)
        .single();
  }

  private static UUID whose(NewBatch batch) {
    return Objects.requireNonNull(batch.accession().id());
  }
}
