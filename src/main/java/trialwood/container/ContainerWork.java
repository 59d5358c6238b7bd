package trialwood.container;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.web.Measures;

/**
 * Asks for two counts a year of every lot with living plants: in April, when the winter's dead can
 * be told, and in October, at the end of the season. Of a discarded candidate it asks to clear what
 * still stands. Common practice, no source.
 */
@Component
class ContainerWork implements WorkSource {

  /** Two weeks after its month a count no longer tells the season from what followed. */
  private static final WorkKind COUNTS = new WorkKind("counts", "Counts of lots", Role.BENCH, 14);

  private static final WorkKind CLEARING =
      new WorkKind("clearing", "Lots to clear", Role.BENCH, WorkKind.FOR_GOOD);

  private final JdbcClient jdbc;
  private final Measures measures;

  ContainerWork(JdbcClient jdbc, Measures measures) {
    this.jdbc = jdbc;
    this.measures = measures;
  }

  private record Uncounted(
      String label,
      String code,
      @Nullable String yard,
      boolean discarded,
      LocalDate pottedOn,
      @Nullable LocalDate counted) {

    String place() {
      return Objects.requireNonNullElse(yard, "containers");
    }

    /** The first April or October that nobody counted. */
    LocalDate firstMissed() {
      return turnAfter(counted == null ? pottedOn : counted);
    }
  }

  @Override
  public List<DueWork> due(LocalDate today) {
    LocalDate turn = lastTurn(today);
    return uncounted(today, turn)
        .map(lot -> lot.discarded() ? clear(lot, turn) : count(lot, turn, today))
        .toList();
  }

  /** The next turn, where it falls into these days. */
  @Override
  public List<DueWork> coming(LocalDate today, LocalDate until) {
    LocalDate turn = turnAfter(today);
    return turn.isAfter(until)
        ? List.of()
        : uncounted(today, turn)
            .filter(lot -> !lot.discarded())
            .map(lot -> count(lot, turn, turn))
            .toList();
  }

  private DueWork count(Uncounted lot, LocalDate turn, LocalDate today) {
    boolean inTime = !today.isAfter(lastDay(turn).plusDays(COUNTS.grace()));
    LocalDate asked = inTime ? turn : lot.firstMissed();
    return COUNTS
        .at(
            lot.place(),
            lastDay(asked),
            "Count %s in lot %s".formatted(lot.code(), lot.label()),
            lot.counted() == null
                ? "potted on %s, never counted".formatted(measures.date(lot.pottedOn()))
                : "last counted on %s".formatted(measures.date(lot.counted())),
            "/containers/%s/count".formatted(lot.label()))
        .from(asked)
        .readAt("/containers/" + lot.label());
  }

  private static DueWork clear(Uncounted lot, LocalDate turn) {
    return CLEARING
        .at(
            lot.place(),
            lastDay(turn),
            "Clear lot " + lot.label(),
            lot.code() + " is discarded and plants of it still stand",
            "/containers/%s/out".formatted(lot.label()))
        .from(turn)
        .readAt("/containers/" + lot.label());
  }

  private Stream<Uncounted> uncounted(LocalDate today, LocalDate turn) {
    return jdbc
        .sql(
            """
            select u.label, a.code, l.yard, l.potted_on, c.counted,
                   case when cand.standing = 'DISCARDED' then true else false end as discarded
            from lot l
            join unit u on u.id = l.unit_id
            join holding h on h.unit_id = l.unit_id
              and h.from_date <= :today and h.until_date > :today
            join accession a on a.id = h.accession_id
            left join candidate cand on cand.accession_id = a.id
            left join (select lot_id, max(on_date) as counted from lot_count group by lot_id) c
              on c.lot_id = l.unit_id
            where l.potted_on < :turn and (c.counted is null or c.counted < :turn)
              and l.potted > (select coalesce(sum(x.number), 0) from lot_loss x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_loss later
                                                where later.supersedes_id = x.id))
                           + (select coalesce(sum(x.number), 0) from lot_outgoing x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_outgoing later
                                                where later.supersedes_id = x.id))
            order by l.yard, u.label
            """)
        .param("today", today)
        .param("turn", turn)
        .query(Uncounted.class)
        .list()
        .stream();
  }

  private static LocalDate lastDay(LocalDate turn) {
    return turn.withDayOfMonth(turn.lengthOfMonth());
  }

  private static LocalDate turnAfter(LocalDate day) {
    LocalDate april = LocalDate.of(day.getYear(), Month.APRIL, 1);
    LocalDate october = LocalDate.of(day.getYear(), Month.OCTOBER, 1);
    if (day.isBefore(april)) {
      return april;
    }
    return day.isBefore(october) ? october : april.plusYears(1);
  }

  private static LocalDate lastTurn(LocalDate today) {
    if (today.getMonthValue() >= Month.OCTOBER.getValue()) {
      return LocalDate.of(today.getYear(), Month.OCTOBER, 1);
    }
    return today.getMonthValue() >= Month.APRIL.getValue()
        ? LocalDate.of(today.getYear(), Month.APRIL, 1)
        : LocalDate.of(today.getYear() - 1, Month.OCTOBER, 1);
  }
}
