package trialwood.dossier.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.dossier.Clocks;
import trialwood.dossier.RouteClock;

/** The candidates that were disclosed or are at the dossier, with their shortest clock. */
@Repository
class DossierList {

  private final JdbcClient jdbc;
  private final Clocks clocks;

  DossierList(JdbcClient jdbc, Clocks clocks) {
    this.jdbc = jdbc;
    this.clocks = clocks;
  }

  /** A candidate in the list, as the statement gives it. */
  record Found(UUID id, String code, @Nullable String talkName, int disclosures, int filings) {}

  /** The same with the open clock that has the least time left. */
  record Line(Found candidate, @Nullable RouteClock shortest) {}

  List<Line> lines(LocalDate today) {
    List<Found> all = found();
    Set<UUID> ids = all.stream().map(Found::id).collect(Collectors.toSet());
    Map<UUID, List<RouteClock>> running = ids.isEmpty() ? Map.of() : clocks.of(ids, today);
    return all.stream()
        .map(
            one ->
                new Line(
                    one,
                    running.getOrDefault(one.id(), List.of()).stream()
                        .filter(it -> it.isOpen(today))
                        .findFirst()
                        .orElse(null)))
        .toList();
  }

  private List<Found> found() {
    return jdbc.sql(
            """
            select a.id, a.code, a.talk_name,
                   (select count(*) from disclosure d
                    where d.accession_id = a.id and not d.struck_out
                      and not exists (select 1 from disclosure n where n.supersedes_id = d.id))
                     as disclosures,
                   (select count(*) from filing f
                    where f.accession_id = a.id and not f.struck_out
                      and not exists (select 1 from filing n where n.supersedes_id = f.id))
                     as filings
            from candidate c
            join accession a on a.id = c.accession_id
            where c.stage in ('DOSSIER', 'RELEASED')
               or exists (select 1 from disclosure d where d.accession_id = a.id)
               or exists (select 1 from filing f where f.accession_id = a.id)
            order by a.code
            """)
        .query(Found.class)
        .list();
  }
}
