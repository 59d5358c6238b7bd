package trialwood.field;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.crop.Better;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;
import trialwood.web.Measures;

/** What was seen on tagged plants where they stand in the field. */
@Component
class FieldEvidence implements EvidenceSource {

  private static final Metric SEASONS =
      new Metric("field.seasons", "Seasons seen", "", "Years in which the plant was looked at.");
  private static final Metric LOOKS =
      new Metric("field.looks", "Dated looks", "", "Days on which the plant was looked at.");
  private static final Metric WORST =
      new Metric("field.worst", "Worst in the field", "", "Worst value of the trait at its place.");
  private static final Metric LATEST =
      new Metric("field.latest", "Latest in the field", "", "Latest value of the trait there.");
  private static final Metric SAFE =
      new Metric(
          "field.ortet-or-copies",
          "Ortet or copies",
          Metric.YES_OR_NO,
          "Whether the ortet stands or living copies are in two places.");

  private final JdbcClient jdbc;

  FieldEvidence(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** One value seen at a position. */
  record Seen(
      UUID accessionId,
      String position,
      UUID traitId,
      String unit,
      String better,
      LocalDate onDate,
      @Nullable BigDecimal value) {}

  @Override
  public Set<Metric> metrics() {
    return Set.of(SEASONS, LOOKS, WORST, LATEST, SAFE);
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return Map.of();
    }
    if (ask.metricKey().equals(SAFE.key())) {
      return safe(accessions, asOf);
    }
    Map<UUID, Evidence> found = new HashMap<>();
    seen(accessions, asOf).stream()
        .filter(it -> ask.traitId() == null || it.traitId().equals(ask.traitId()))
        .collect(Collectors.groupingBy(Seen::accessionId))
        .forEach((accession, all) -> found.put(accession, tell(ask, all)));
    return found;
  }

  private List<Seen> seen(Set<UUID> accessions, LocalDate asOf) {
    return jdbc.sql(
            """
            select h.accession_id, u.label as position, o.trait_id, coalesce(t.unit, '') as unit,
                   t.better, o.on_date, o.number_value as "value"
            from observation o
            join unit u on u.id = o.unit_id and u.kind = 'POSITION'
            join trait t on t.id = o.trait_id
            join holding h on h.unit_id = o.unit_id and h.from_date <= o.on_date and o.on_date < h.until_date
            where h.accession_id in (:accessions) and o.on_date <= :asOf
              and not exists (select 1 from observation s where s.supersedes_id = o.id)
            order by o.on_date
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(Seen.class)
        .list();
  }

  private static Evidence tell(Ask ask, List<Seen> all) {
    Seen last = all.get(all.size() - 1);
    return switch (ask.metricKey()) {
      case "field.seasons" -> {
        List<Integer> years = all.stream().map(it -> it.onDate().getYear()).distinct().toList();
        yield told(
            years.size(),
            "",
            all,
            years.stream().map(String::valueOf).collect(Collectors.joining(", ")));
      }
      case "field.looks" -> {
        long days = all.stream().map(Seen::onDate).distinct().count();
        yield told(days, "", all, "last on " + Measures.day(last.onDate()));
      }
      default -> ofTrait(ask, all.stream().filter(it -> it.value() != null).toList());
    };
  }

  private static Evidence ofTrait(Ask ask, List<Seen> values) {
    if (values.isEmpty()) {
      return Evidence.noRecord("No value of this trait was recorded in the field.");
    }
    Comparator<Seen> byValue = Comparator.comparing(it -> Objects.requireNonNull(it.value()));
    Seen told =
        ask.metricKey().equals(LATEST.key())
            ? values.get(values.size() - 1)
            : values.get(0).better().equals(Better.LOWER.name())
                ? values.stream().max(byValue).orElseThrow()
                : values.stream().min(byValue).orElseThrow();
    return told(
        Objects.requireNonNull(told.value()).doubleValue(),
        told.unit(),
        values,
        "on %s, of %d values".formatted(Measures.day(told.onDate()), values.size()));
  }

  private static Evidence told(double value, String unit, List<Seen> all, String counted) {
    Seen last = all.get(all.size() - 1);
    return Evidence.of(value, unit, last.onDate(), "Read off the looks at its position.")
        .from(1, all.size(), counted)
        .over(1, (int) all.stream().map(it -> it.onDate().getYear()).distinct().count())
        .citing("position " + last.position(), "/field/" + last.position().split("/")[0])
        .build();
  }

  /** The ortet stands until somebody records that it is lost; copies are units in other places. */
  private Map<UUID, Evidence> safe(Set<UUID> accessions, LocalDate asOf) {
    record Plant(UUID accessionId, boolean lost, int copies) {}
    return jdbc
        .sql(
            """
            select f.accession_id,
                   exists (select 1 from candidate_event e
                           where e.accession_id = f.accession_id and e.kind = 'ORTET_LOST'
                             and e.on_date <= :asOf) as lost,
                   (select count(distinct u.kind)
                    from holding h join unit u on u.id = h.unit_id
                    where h.accession_id = f.accession_id and u.kind in ('LOT', 'STOCK', 'PLOT')
                      and h.from_date <= :asOf and :asOf < h.until_date) as copies
            from field_tag f
            where f.accession_id in (:accessions) and f.tagged_on <= :asOf
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(Plant.class)
        .list()
        .stream()
        .collect(
            Collectors.toMap(
                Plant::accessionId,
                plant ->
                    Evidence.of(
                            !plant.lost() || plant.copies() >= 2 ? 1 : 0,
                            Metric.YES_OR_NO,
                            asOf,
                            "From the field tag, what happened to the ortet, and the units that"
                                + " hold copies.")
                        .from(
                            1 + plant.copies(),
                            1,
                            plant.lost()
                                ? "ortet lost, copies in %d places".formatted(plant.copies())
                                : "ortet standing")
                        .build()));
  }
}
