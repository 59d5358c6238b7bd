package trialwood.dossier;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Reads origins and first rootings off the records, one statement each for any number of plants.
 */
@Repository
public class Origins {

  private final JdbcClient jdbc;

  Origins(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  public Map<UUID, Origin> of(Set<UUID> accessions) {
    return jdbc
        .sql(
            """
            select a.id as accession_id, a.code, a.talk_name, c.botanical_name,
                   m.code as seed_parent, q.code as pollen_parent, a.pollination, a.origin as in_words,
                   p.code as population, p.name as population_name, s.name as site, p.planted_on,
                   f.row_number as in_row, f.position_number as "position", f.tagged_on,
                   w.name as tagged_by, f.seen
            from accession a
            join crop c on c.id = a.crop_id
            left join accession m on m.id = a.seed_parent_id
            left join accession q on q.id = a.pollen_parent_id
            left join field_tag f on f.accession_id = a.id
            left join population p on p.id = f.population_id
            left join site s on s.id = p.site_id
            left join person w on w.id = f.person_id
            where a.id in (:accessions)
            """)
        .param("accessions", accessions)
        .query(Origin.class)
        .list()
        .stream()
        .collect(Collectors.toMap(Origin::accessionId, Function.identity()));
  }

  /** The first batch with roots, by candidate; the earliest count decides. */
  public Map<UUID, FirstRooting> firstRootings(Set<UUID> accessions, LocalDate asOf) {
    return jdbc
        .sql(
            """
            select h.accession_id, b.code as batch, r.code as run, b.source, r.bench, r.cutting,
                   r.length_mm, coalesce(b.wounding, r.wounding) as wounding,
                   coalesce(b.hormone, r.hormone) as hormone, coalesce(b.form, r.form) as form,
                   coalesce(b.ppm, r.ppm) as ppm, min(t.stuck_on) as stuck_on,
                   min(f.on_date) as counted_on, sum(f.rooted + f.taken_out_rooted) as rooted,
                   sum(t.stuck + coalesce((select sum(x.cuttings) from tray_change x where x.tray_id = t.unit_id), 0)) as stuck, min(w.name) as stuck_by
            from final_count f
            join tray t on t.unit_id = f.tray_id
            join batch b on b.id = t.batch_id
            join sticking_run r on r.id = b.run_id
            join holding h on h.unit_id = t.unit_id
              and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
            left join person w on w.id = t.person_id
            where h.accession_id in (:accessions) and f.on_date <= :asOf
              and not exists (select 1 from superseded_count s where s.count_id = f.id)
            group by h.accession_id, b.code, r.code, b.source, r.bench, r.cutting, r.length_mm,
                     coalesce(b.wounding, r.wounding), coalesce(b.hormone, r.hormone),
                     coalesce(b.form, r.form), coalesce(b.ppm, r.ppm)
            having sum(f.rooted + f.taken_out_rooted) > 0
            order by min(f.on_date), min(t.stuck_on), b.code
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(FirstRooting.class)
        .list()
        .stream()
        .collect(
            Collectors.toMap(
                FirstRooting::accessionId, Function.identity(), (first, later) -> first));
  }
}
