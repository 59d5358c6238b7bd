package trialwood.trial;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.SiteSeason;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;
import trialwood.web.Measures;

/** What the plots of the trials say of a candidate. */
@Component
class TrialEvidence implements EvidenceSource {

  private static final String AGAINST = "trial.against-check";
  private static final String AHEAD = "trial.ahead";
  private static final String WORST = "trial.worst";
  private static final String RELATIVE = "trial.relative";
  private static final String SITES = "trial.sites";
  private static final String SEASONS = "trial.seasons";

  private static final Set<Metric> METRICS =
      Set.of(
          new Metric(
              AGAINST,
              "Difference from the check in trials",
              "",
              "Difference from the check's mean over sites, each site weighing the same, with the"
                  + " interaction of entry and site as the error; in the unit of the trait."),
          new Metric(
              AHEAD,
              "Site-seasons ahead of the check",
              "",
              "Share of the site-seasons with both in which the entry's mean was better."),
          new Metric(
              WORST,
              "Worst site-season against the check",
              "",
              "Difference from the check in the site-season least in favour of the entry; in the"
                  + " unit of the trait."),
          new Metric(
              RELATIVE,
              "Relative to the check under pressure",
              "",
              "Ratio to the check's mean over the site-seasons in which the susceptible check"
                  + " reached 20, each site weighing the same."),
          new Metric(SITES, "Trial sites with data", "", "Sites at which a plot has a value."),
          new Metric(SEASONS, "Trial seasons with data", "", "Years in which a plot has a value."));

  private final SeasonMeans means;
  private final Traits traits;
  private final Trials trials;
  private final Measures measures;
  private final JdbcClient jdbc;

  TrialEvidence(
      SeasonMeans means, Traits traits, Trials trials, Measures measures, JdbcClient jdbc) {
    this.means = means;
    this.traits = traits;
    this.trials = trials;
    this.measures = measures;
    this.jdbc = jdbc;
  }

  @Override
  public Set<Metric> metrics() {
    return METRICS;
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return Map.of();
    }
    return switch (ask.metricKey()) {
      case SITES, SEASONS -> extent(ask.metricKey(), accessions, asOf);
      case AGAINST, AHEAD, WORST, RELATIVE ->
          Optional.ofNullable(ask.traitId())
              .flatMap(traits::findById)
              .map(trait -> beside(ask, trait, accessions, asOf))
              .orElseThrow(() -> new IllegalArgumentException("A comparison needs a trait."));
      default -> throw new IllegalArgumentException("Not a metric of trials: " + ask.metricKey());
    };
  }

  private Map<UUID, Evidence> beside(Ask ask, Trait trait, Set<UUID> accessions, LocalDate asOf) {
    Set<UUID> entered = means.trialsOf(accessions, asOf);
    Map<UUID, String> codes =
        trials.findAllById(entered).stream()
            .collect(Collectors.toMap(trial -> Objects.requireNonNull(trial.id()), Trial::code));
    TraitSeasons seasons = means.of(trait.id(), entered, asOf);
    Map<UUID, UUID> checks = checks(entered, EntryRole.of(ask.check()));
    Map<UUID, Map<SiteSeason, Double>> pressure =
        ask.metricKey().equals(RELATIVE)
            ? pressure(seasons, checks(entered, EntryRole.SUSCEPTIBLE))
            : Map.of();
    Optional<Better> better = Direction.of(trait);
    Map<UUID, Evidence> answers = new HashMap<>();
    for (UUID accession : accessions) {
      Pairing pair = Pairing.of(seasons, accession, checks);
      if (!pair.isEmpty()) {
        PairedEvidence evidence = new PairedEvidence(trait, pair, codes, measures);
        answers.put(
            accession,
            switch (ask.metricKey()) {
              case AGAINST -> evidence.difference();
              case RELATIVE -> evidence.relative(pressure);
              case AHEAD -> better.map(evidence::ahead).orElseGet(() -> undirected(trait));
              default -> better.map(evidence::worst).orElseGet(() -> undirected(trait));
            });
      }
    }
    return answers;
  }

  private static Evidence undirected(Trait trait) {
    return Evidence.noRecord("%s has no better way.".formatted(trait.name()));
  }

  private static Map<UUID, Map<SiteSeason, Double>> pressure(
      TraitSeasons seasons, Map<UUID, UUID> susceptible) {
    Map<UUID, Map<SiteSeason, Double>> pressure = new HashMap<>();
    for (SeasonMean mean : seasons.means()) {
      if (mean.mean() != null && mean.accessionId().equals(susceptible.get(mean.trialId()))) {
        pressure
            .computeIfAbsent(mean.trialId(), trial -> new HashMap<>())
            .put(mean.at(), mean.mean());
      }
    }
    return pressure;
  }

  /** The first check of that role in each trial that has one. */
  private Map<UUID, UUID> checks(Set<UUID> trials, EntryRole role) {
    Map<UUID, UUID> checks = new LinkedHashMap<>();
    if (!trials.isEmpty()) {
      jdbc.sql(
              """
              select e.trial_id, e.accession_id
              from trial_entry e
              join trial t on t.id = e.trial_id
              join accession a on a.id = e.accession_id
              where e.trial_id in (:trials) and e.role = :role
              order by t.code, a.code
              """)
          .param("trials", trials)
          .param("role", role.name())
          .query(
              row -> {
                checks.putIfAbsent(
                    row.getObject("trial_id", UUID.class),
                    row.getObject("accession_id", UUID.class));
              });
    }
    return checks;
  }

  private Map<UUID, Evidence> extent(String metric, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, Evidence> answers = new HashMap<>();
    jdbc.sql(
            """
            select h.accession_id, count(distinct ts.site_id) as sites,
                   count(distinct extract(year from o.on_date)) as seasons,
                   count(distinct p.unit_id) as plots, max(o.on_date) as newest,
                   string_agg(distinct t.code, '/' order by t.code) as trials
            from plot p
            join trial_site ts on ts.id = p.trial_site_id
            join trial t on t.id = ts.trial_id
            join observation o on o.unit_id = p.unit_id
            join holding h on h.unit_id = p.unit_id
              and h.from_date <= o.on_date and o.on_date < h.until_date
            where h.accession_id in (:accessions) and o.on_date <= :asOf
              and o.none_because is null
              and not exists (select 1 from observation later where later.supersedes_id = o.id)
              and
            """
                + SeasonMeans.TAKEN_OUT
                + """
                is null
                group by h.accession_id
                """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(
            row -> {
              int sites = row.getInt("sites");
              int seasons = row.getInt("seasons");
              int plots = row.getInt("plots");
              EvidenceBuilder evidence =
                  Evidence.of(
                          metric.equals(SITES) ? sites : seasons,
                          "",
                          row.getObject("newest", LocalDate.class),
                          "Counted over the plots of all trials that have a value; what an event"
                              + " took out does not count.")
                      .from(plots, plots, measures.counted(plots, "plot", "plots"))
                      .over(sites, seasons);
              for (String trial : row.getString("trials").split("/")) {
                evidence.citing("trial " + trial, "/trials/" + trial);
              }
              answers.put(row.getObject("accession_id", UUID.class), evidence.build());
            });
    return answers;
  }
}
