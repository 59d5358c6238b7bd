package trialwood.dossier;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.web.Measures;

/**
 * Reminds of every novelty clock half a year before its last day, until something is filed. Of a
 * discarded candidate it says nothing.
 */
@Component
class FilingWork implements WorkSource {

  /** A day late is too late. */
  private static final WorkKind FILING =
      new WorkKind("filing", "Last days of filing", Role.DOSSIER, 0);

  private static final int DAYS_AHEAD = 180;

  /** So long it is said that a day went by; the dossier says so for good. */
  private static final int DAYS_AFTER = 30;

  private final JdbcClient jdbc;
  private final Clocks clocks;

  FilingWork(JdbcClient jdbc, Clocks clocks) {
    this.jdbc = jdbc;
    this.clocks = clocks;
  }

  private record Disclosed(UUID id, String code) {}

  @Override
  public List<DueWork> due(LocalDate today) {
    return running(today).stream().filter(work -> !work.from().isAfter(today)).toList();
  }

  @Override
  public List<DueWork> coming(LocalDate today, LocalDate until) {
    return running(today).stream()
        .filter(work -> work.from().isAfter(today) && !work.from().isAfter(until))
        .toList();
  }

  private List<DueWork> running(LocalDate today) {
    Map<UUID, String> codes =
        disclosed().stream().collect(Collectors.toMap(Disclosed::id, Disclosed::code));
    Set<UUID> ids = codes.keySet();
    return ids.isEmpty()
        ? List.of()
        : clocks.of(ids, today).entrySet().stream()
            .flatMap(
                one ->
                    one.getValue().stream()
                        .filter(clock -> clock.filing() == null)
                        .filter(clock -> clock.clock().daysLeft(today) >= -DAYS_AFTER)
                        .map(clock -> work(codes.getOrDefault(one.getKey(), ""), clock)))
            .toList();
  }

  private static DueWork work(String code, RouteClock clock) {
    LocalDate last = clock.clock().last();
    return FILING
        .at(
            "Desk",
            last,
            "File %s, %s".formatted(code, clock.route().name()),
            "disclosed on %s: a %s"
                .formatted(Measures.day(clock.started().onDate()), clock.started().kind().word()),
            "/dossiers/%s/filings/new".formatted(code))
        .from(last.minusDays(DAYS_AHEAD))
        .readAt("/dossiers/" + code);
  }

  private List<Disclosed> disclosed() {
    return jdbc.sql(
            """
            select a.id, a.code
            from accession a
            join candidate c on c.accession_id = a.id
            where c.standing <> 'DISCARDED'
              and exists (select 1 from disclosure d where d.accession_id = a.id)
            """)
        .query(Disclosed.class)
        .list();
  }
}
