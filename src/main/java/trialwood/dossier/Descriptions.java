package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.lineage.Accession;
import trialwood.lineage.CheckRole;
import trialwood.lineage.CropCheck;
import trialwood.lineage.CropChecks;

/** Writes descriptions from what was seen on plants and plots. */
@Service
public class Descriptions {

  private final Traits traits;
  private final CropChecks checks;
  private final JdbcClient jdbc;

  Descriptions(Traits traits, CropChecks checks, JdbcClient jdbc) {
    this.traits = traits;
    this.checks = checks;
    this.jdbc = jdbc;
  }

  /** Every trait that belongs to the description, beside the market check, seen up to that day. */
  public List<Described> of(Accession candidate, LocalDate asOf) {
    UUID own = Objects.requireNonNull(candidate.id());
    Set<UUID> market =
        checks.findByCropId(candidate.cropId()).stream()
            .filter(check -> check.role() == CheckRole.MARKET)
            .map(CropCheck::accessionId)
            .collect(Collectors.toSet());
    Set<UUID> both = new HashSet<>(market);
    both.add(own);
    Map<UUID, List<Seen>> byTrait =
        seen(both, asOf).stream().collect(Collectors.groupingBy(Seen::traitId));
    return traits.findByCropIdOrderByCode(candidate.cropId()).stream()
        .filter(Trait::isDescribed)
        .map(
            trait ->
                described(
                    trait,
                    own,
                    byTrait.getOrDefault(Objects.requireNonNull(trait.id()), List.of())))
        .toList();
  }

  private static Described described(Trait trait, UUID candidate, List<Seen> all) {
    Map<Boolean, List<Seen>> whose =
        all.stream().collect(Collectors.partitioningBy(it -> it.accessionId().equals(candidate)));
    List<Seen> own = whose.getOrDefault(true, List.of());
    List<Seen> check = whose.getOrDefault(false, List.of());
    return new Described(
        trait, Sample.of(own), Sample.of(like(own, check)), Sample.of(like(check, own)));
  }

  /** Those of the values that were taken on a kind of unit and in a season of the others. */
  private static List<Seen> like(List<Seen> values, List<Seen> others) {
    Set<List<Object>> alike = others.stream().map(Seen::alike).collect(Collectors.toSet());
    return values.stream().filter(it -> alike.contains(it.alike())).toList();
  }

  /** Values of described traits; what an event took out at a site is not among them. */
  List<Seen> seen(Collection<UUID> accessions, LocalDate asOf) {
    return jdbc.sql(
            """
            select h.accession_id, o.trait_id, u.kind, s.name as site, o.on_date,
                   o.number_value as number,
                   coalesce(o.text_value, cast(o.date_value as varchar)) as words
            from observation o
            join trait t on t.id = o.trait_id and t.described
            join unit u on u.id = o.unit_id and u.kind in ('PLANT', 'PLOT')
            join holding h on h.unit_id = o.unit_id
              and h.from_date <= o.on_date and o.on_date < h.until_date
            left join plot p on p.unit_id = u.id
            left join trial_site ts on ts.id = p.trial_site_id
            left join site s on s.id = coalesce(ts.site_id, u.site_id)
            where h.accession_id in (:accessions) and o.on_date <= :asOf
              and o.none_because is null
              and not exists (select 1 from observation n where n.supersedes_id = o.id)
              and not exists (
                select 1
                from site_event e join site_event_trait et on et.event_id = e.id
                where e.site_id = ts.site_id and (e.trial_id is null or e.trial_id = ts.trial_id)
                  and et.trait_id = o.trait_id and o.on_date between e.void_from and e.void_until
                  and (not exists (select 1 from site_event_plot ep where ep.event_id = e.id)
                       or exists (select 1 from site_event_plot ep
                                  where ep.event_id = e.id and ep.plot_id = p.unit_id)))
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(Seen.class)
        .list();
  }
}
