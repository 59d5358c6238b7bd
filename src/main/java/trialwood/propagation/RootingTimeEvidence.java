package trialwood.propagation;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.analysis.rate.TrayPrior;
import trialwood.analysis.time.RootingLook;
import trialwood.analysis.time.RootingTime;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;

/**
 * When half of the lifted cuttings had rooted: a bracket between two looks, never a day. Read off
 * the run that counts for rooting.
 */
@Component
class RootingTimeEvidence implements EvidenceSource {

  private static final Metric DAYS =
      new Metric(
          "propagation.days-to-root",
          "Days to root",
          "d",
          "The look by which half of the lifted cuttings had rooted; the truth lies after the look"
              + " before it.");

  private final TrayOutcomes outcomes;
  private final JdbcClient jdbc;

  RootingTimeEvidence(TrayOutcomes outcomes, JdbcClient jdbc) {
    this.outcomes = outcomes;
    this.jdbc = jdbc;
  }

  @Override
  public Set<Metric> metrics() {
    return Set.of(DAYS);
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, List<RunResult>> runs =
        RunResult.byAccession(outcomes.of(accessions, asOf), TrayPrior.USUAL);
    Map<UUID, Evidence> found = new HashMap<>();
    samples(accessions, asOf).stream()
        .collect(Collectors.groupingBy(LookSample::accessionId))
        .forEach(
            (accession, looks) ->
                found.put(
                    accession,
                    ofRun(
                        RunResult.thatCounts(runs.getOrDefault(accession, List.of()))
                            .map(RunResult::run)
                            .filter(run -> looks.stream().anyMatch(look -> look.run().equals(run)))
                            .orElseGet(() -> newest(looks)),
                        looks)));
    return found;
  }

  /** Looks at trays that count, read through the tie of the day. */
  List<LookSample> samples(Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return List.of();
    }
    return jdbc.sql(
            """
            with ruled as (
              select tray_id, counts,
                     row_number() over (partition by tray_id order by on_date desc, recorded_at desc, id desc) as latest
              from tray_ruling
              where on_date <= :asOf
            )
            select r.code as run, r.from_date as run_from, h.accession_id, u.label as tray, l.on_date,
                   t.stuck_on, l.lifted, l.rooted, l.alive,
                   t.stuck + coalesce((select sum(x.cuttings) from tray_change x
                                       where x.tray_id = l.tray_id and x.on_date <= l.on_date), 0)
                           - coalesce((select sum(o.number) from taken_out o
                                       where o.tray_id = l.tray_id and o.on_date <= l.on_date
                                         and not exists (select 1 from taken_out s where s.supersedes_id = o.id)), 0)
                     as in_tray
            from tray_look l
            join tray t on t.unit_id = l.tray_id
            join unit u on u.id = t.unit_id
            join batch b on b.id = t.batch_id
            join sticking_run r on r.id = b.run_id
            join holding h on h.unit_id = t.unit_id and h.from_date <= l.on_date and l.on_date < h.until_date
            left join ruled v on v.tray_id = t.unit_id and v.latest = 1
            where h.accession_id in (:accessions) and l.on_date <= :asOf and l.lifted > 0
              and l.on_date > t.stuck_on
              and coalesce(v.counts, true)
              and not exists (select 1 from tray_look s where s.supersedes_id = l.id)
            order by r.from_date desc, l.on_date, u.label
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(LookSample.class)
        .list();
  }

  /** While no tray is counted, the run that was stuck last. */
  private static String newest(List<LookSample> looks) {
    return looks.stream().max(Comparator.comparing(LookSample::runFrom)).orElseThrow().run();
  }

  private static Evidence ofRun(String code, List<LookSample> looks) {
    List<LookSample> run = looks.stream().filter(look -> look.run().equals(code)).toList();
    RootingTime time =
        RootingTime.ofHalf(
            run.stream()
                .map(look -> new RootingLook(look.day(), look.lifted(), look.rooted()))
                .toList());
    if (time instanceof RootingTime.NotReached not) {
      return Evidence.noRecord(
          "Half had not rooted by the last look, on day %d.".formatted(not.lastDay()));
    }
    if (!(time instanceof RootingTime.Reached reached)) {
      return Evidence.noRecord("Nobody has looked.");
    }
    EvidenceBuilder told =
        Evidence.of(
                reached.by(),
                DAYS.unit(),
                run.get(run.size() - 1).onDate(),
                "Looks of all trays pooled by day; half rooted between two looks.")
            .from(
                run.stream().mapToInt(LookSample::lifted).sum(),
                (int) run.stream().map(LookSample::tray).distinct().count(),
                "after day %d, by day %d, run %s".formatted(reached.after(), reached.by(), code))
            .citing("run " + code, "/bench/runs/" + code);
    return told.build();
  }
}
