package trialwood.dossier;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;
import trialwood.web.Measures;

/** How complete a candidate's dossier is, and how much time is left for it. */
@Component
class DossierEvidence implements EvidenceSource {

  private static final Metric DESCRIBED =
      new Metric(
          "dossier.described",
          "Description complete",
          "%",
          "Share of the traits of the description with values on at least 10 plants.");
  private static final Metric ORIGIN =
      new Metric(
          "dossier.origin",
          "Origin told",
          Metric.YES_OR_NO,
          "Whether the seed parent or the origin in words, the field tag and the first asexual"
              + " reproduction are on record.");
  private static final Metric FILED =
      new Metric("dossier.filed", "Filings", "", "Applications on record.");
  private static final Metric DAYS_LEFT =
      new Metric(
          "dossier.days-left",
          "Days left on the shortest clock",
          "days",
          "Days to the last day of filing on the open route with the least; met when no clock runs.");

  private final Descriptions descriptions;
  private final Origins origins;
  private final Filings filings;
  private final Clocks clocks;
  private final Measures measures;
  private final JdbcClient jdbc;

  DossierEvidence(
      Descriptions descriptions,
      Origins origins,
      Filings filings,
      Clocks clocks,
      Measures measures,
      JdbcClient jdbc) {
    this.descriptions = descriptions;
    this.origins = origins;
    this.filings = filings;
    this.clocks = clocks;
    this.measures = measures;
    this.jdbc = jdbc;
  }

  /** A candidate with the number of traits that its crop's description has. */
  record Named(UUID id, String code, int traits) {}

  @Override
  public Set<Metric> metrics() {
    return Set.of(DESCRIBED, ORIGIN, FILED, DAYS_LEFT);
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return Map.of();
    }
    List<Named> all = named(accessions);
    return switch (ask.metricKey()) {
      case "dossier.described" -> described(all, accessions, asOf);
      case "dossier.origin" -> origin(all, accessions, asOf);
      case "dossier.filed" -> filed(all, accessions, asOf);
      default -> daysLeft(all, accessions, asOf);
    };
  }

  private Map<UUID, Evidence> described(List<Named> all, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, Map<UUID, List<Seen>>> byTrait =
        descriptions.seen(accessions, asOf).stream()
            .collect(
                Collectors.groupingBy(Seen::accessionId, Collectors.groupingBy(Seen::traitId)));
    Map<UUID, Evidence> told = new HashMap<>();
    for (Named one : all) {
      if (one.traits() > 0) {
        long enough =
            byTrait.getOrDefault(one.id(), Map.of()).values().stream()
                .filter(seen -> Sample.of(seen).isEnough())
                .count();
        told.put(
            one.id(),
            told(one, 100.0 * enough / one.traits(), "%", asOf, DESCRIBED)
                .from(one.traits(), 1, "%d of %d traits".formatted(enough, one.traits()))
                .build());
      }
    }
    return told;
  }

  private Map<UUID, Evidence> origin(List<Named> all, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, Origin> told = origins.of(accessions);
    Map<UUID, FirstRooting> rooted = origins.firstRootings(accessions, asOf);
    return each(
        all,
        one -> {
          @Nullable Origin origin = told.get(one.id());
          boolean complete =
              origin != null && origin.missing().isEmpty() && rooted.containsKey(one.id());
          return told(one, complete ? 1 : 0, Metric.YES_OR_NO, asOf, ORIGIN)
              .from(1, 1, complete ? "complete" : "not complete")
              .build();
        });
  }

  private Map<UUID, Evidence> filed(List<Named> all, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, List<Filing>> filed =
        filings.standing(accessions, asOf).stream()
            .collect(Collectors.groupingBy(Filing::accessionId));
    return each(
        all,
        one -> {
          int n = filed.getOrDefault(one.id(), List.of()).size();
          return told(one, n, "", asOf, FILED)
              .from(n, 1, n == 1 ? "application" : "applications")
              .build();
        });
  }

  private Map<UUID, Evidence> daysLeft(List<Named> all, Set<UUID> accessions, LocalDate asOf) {
    Map<UUID, List<RouteClock>> running = clocks.of(accessions, asOf);
    return each(all, one -> left(one, running.getOrDefault(one.id(), List.of()), asOf));
  }

  private Evidence left(Named one, List<RouteClock> clocks, LocalDate asOf) {
    EvidenceBuilder told =
        clocks.stream()
            .filter(it -> it.isOpen(asOf))
            .findFirst()
            .map(
                it ->
                    told(one, it.clock().daysLeft(asOf), "days", asOf, DAYS_LEFT)
                        .from(
                            1, 1, it.route().code() + " until " + measures.date(it.clock().last())))
            .orElseGet(() -> noneOpen(one, clocks, asOf));
    clocks.stream()
        .filter(it -> it.isRunOut(asOf))
        .forEach(
            it ->
                told.remarking(
                    "%s ran out on %s."
                        .formatted(it.route().code(), measures.date(it.clock().last()))));
    return told.build();
  }

  /** No time is left where a last day went by; where no clock runs, nothing is asked. */
  private static EvidenceBuilder noneOpen(Named one, List<RouteClock> clocks, LocalDate asOf) {
    if (clocks.stream().anyMatch(it -> it.isRunOut(asOf))) {
      return told(one, 0, "days", asOf, DAYS_LEFT).from(0, 0, "no open clock is left");
    }
    return citing(
        one, Evidence.moot("no clock runs", DAYS_LEFT.unit(), asOf, DAYS_LEFT.definition()));
  }

  private static EvidenceBuilder told(
      Named one, double value, String unit, LocalDate asOf, Metric metric) {
    return citing(one, Evidence.of(value, unit, asOf, metric.definition()));
  }

  private static EvidenceBuilder citing(Named one, EvidenceBuilder told) {
    return told.citing("dossier " + one.code(), "/dossiers/" + one.code());
  }

  private static Map<UUID, Evidence> each(List<Named> all, Function<Named, Evidence> tell) {
    return all.stream().collect(Collectors.toMap(Named::id, tell));
  }

  private List<Named> named(Set<UUID> accessions) {
    return jdbc.sql(
            """
            select a.id, a.code,
                   (select count(*) from trait t where t.crop_id = a.crop_id and t.described)
                     as traits
            from accession a
            where a.id in (:accessions)
            """)
        .param("accessions", accessions)
        .query(Named.class)
        .list();
  }
}
