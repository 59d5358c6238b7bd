package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.lineage.Accession;

/** Writes descriptions from what was seen on plants and plots. */
@Service
public class Descriptions {

  private final Traits traits;
  private final JdbcClient jdbc;

  Descriptions(Traits traits, JdbcClient jdbc) {
    this.traits = traits;
    this.jdbc = jdbc;
  }

  /** A known variety to measure the candidate beside. */
  public record Known(UUID id, String code, @Nullable String description) {}

  /** The market check and what was bought for comparison, by code. */
  public List<Known> known(UUID crop) {
    return jdbc.sql(
            """
            select a.id, a.code, a.description
            from accession a
            where a.crop_id = :crop
              and (a.kind = 'COMPARISON'
                   or exists (select 1 from crop_check c
                              where c.accession_id = a.id and c.crop_id = a.crop_id
                                and c.role = 'MARKET'))
            order by a.code
            """)
        .param("crop", crop)
        .query(Known.class)
        .list();
  }

  /** Every trait that belongs to the description, beside known varieties, seen up to that day. */
  public List<Described> of(Accession candidate, List<Known> known, LocalDate asOf) {
    UUID own = Objects.requireNonNull(candidate.id());
    Set<UUID> all = known.stream().map(Known::id).collect(Collectors.toSet());
    all.add(own);
    Map<UUID, List<Seen>> byTrait =
        seen(all, asOf).stream().collect(Collectors.groupingBy(Seen::traitId));
    return traits.findByCropIdOrderByCode(candidate.cropId()).stream()
        .filter(Trait::isDescribed)
        .map(
            trait ->
                described(
                    trait,
                    own,
                    known,
                    byTrait.getOrDefault(Objects.requireNonNull(trait.id()), List.of())))
        .toList();
  }

  private static Described described(
      Trait trait, UUID candidate, List<Known> known, List<Seen> all) {
    Map<UUID, List<Seen>> whose = all.stream().collect(Collectors.groupingBy(Seen::accessionId));
    List<Seen> own = whose.getOrDefault(candidate, List.of());
    return new Described(
        trait,
        Sample.of(own),
        known.stream()
            .filter(it -> !it.id().equals(candidate))
            .map(it -> beside(it, own, whose.getOrDefault(it.id(), List.of())))
            .filter(it -> it.own().n() > 0)
            .toList());
  }

  /** From the last season in which both were seen: in a mean over years the older plants win. */
  private static Beside beside(Known known, List<Seen> own, List<Seen> other) {
    List<Seen> mine = like(own, other);
    int season = mine.stream().mapToInt(Seen::season).max().orElse(0);
    List<Seen> last = mine.stream().filter(it -> it.season() == season).toList();
    return Beside.of(known.code(), last, like(other, last));
  }

  /** Those of the values that were taken on the kind of unit, where and when others were. */
  private static List<Seen> like(List<Seen> values, List<Seen> others) {
    Set<List<Object>> alike = others.stream().map(Seen::alike).collect(Collectors.toSet());
    return values.stream().filter(it -> alike.contains(it.alike())).toList();
  }

  /** Values of described traits; what an event took out at a site is not among them. */
  List<Seen> seen(Collection<UUID> accessions, LocalDate asOf) {
    return jdbc.sql(
            """
            select h.accession_id, o.unit_id, o.trait_id, u.kind, s.name as site, o.on_date,
                   case when step.meaning is null then o.number_value end as number,
                   coalesce(step.meaning, o.text_value, cast(o.date_value as varchar)) as words
            from observation o
            join trait t on t.id = o.trait_id and t.described
            join unit u on u.id = o.unit_id and u.kind in ('PLANT', 'PLOT')
            join holding h on h.unit_id = o.unit_id
              and h.from_date <= o.on_date and o.on_date < h.until_date
            left join (select trait_id, step, min(meaning) as meaning
                       from trait_step group by trait_id, step) step
              on step.trait_id = o.trait_id and step.step = o.number_value
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
