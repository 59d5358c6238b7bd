package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;

/** When an accession was stuck, and how it rooted. */
@Component
class PropagationLifeLine implements LifeLineSource {

  private static final LocalDate EVER = LocalDate.of(9999, 1, 1);

  private final JdbcClient jdbc;
  private final TrayOutcomes outcomes;

  PropagationLifeLine(JdbcClient jdbc, TrayOutcomes outcomes) {
    this.jdbc = jdbc;
    this.outcomes = outcomes;
  }

  @Override
  public List<LifeEvent> events(UUID accessionId) {
    List<LifeEvent> stuck =
        jdbc.sql(
                """
                select min(t.stuck_on) as date, 'propagation' as place,
                       'stuck ' || sum(t.stuck + coalesce((select sum(x.cuttings) from tray_change x where x.tray_id = t.unit_id), 0)) || ' cuttings in run ' || r.code as sentence,
                       '/bench/runs/' || r.code as href
                from holding h
                join tray t on t.unit_id = h.unit_id
                           and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
                join batch b on b.id = t.batch_id
                join sticking_run r on r.id = b.run_id
                where h.accession_id = :accession
                group by r.code
                """)
            .param("accession", accessionId)
            .query(LifeEvent.class)
            .list();
    List<LifeEvent> rooted =
        RunResult.of(accessionId, outcomes.of(Set.of(accessionId), EVER)).stream()
            .map(
                run ->
                    new LifeEvent(
                        run.countedOn(),
                        "propagation",
                        "rooted %d of %d in run %s".formatted(run.rooted(), run.stuck(), run.run()),
                        "/bench/runs/" + run.run()))
            .toList();
    return Stream.concat(stuck.stream(), rooted.stream()).toList();
  }
}
