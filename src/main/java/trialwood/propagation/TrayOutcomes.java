package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Counted trays, as they stood on a day. */
@Repository
class TrayOutcomes {

  /**
   * One row a tray with exactly one standing final count: two that contradict each other count for
   * neither until a person settles on one. The latest ruling and the first weaning count 14 days or
   * more after the last mist belong to the row. A tray stands for the cuttings it holds: those that
   * went into another tray are counted there, and a tray that gave all away has no row.
   */
  private static final String COUNTED =
      """
      with counted as (
        select f.*, count(*) over (partition by f.tray_id) as standing
        from final_count f
        where f.on_date <= :asOf
          and not exists (select 1 from superseded_count s where s.count_id = f.id)
      ), ruled as (
        select tray_id, counts, reason,
               row_number() over (partition by tray_id order by on_date desc, recorded_at desc, id desc) as latest
        from tray_ruling
        where on_date <= :asOf
      ), weaned as (
        select tray_id, alive,
               row_number() over (partition by tray_id order by on_date, recorded_at desc) as nearest
        from weaning w
        where on_date <= :asOf and on_date >= last_mist + 14
          and not exists (select 1 from weaning s where s.supersedes_id = w.id)
      ), changed as (
        select tray_id, sum(cuttings) as cuttings from tray_change where on_date <= :asOf group by tray_id
      )
      select r.id as run_id, r.code as run, r.from_date as run_from,
             crop.check_floor_percent as floor_percent,
             h.accession_id, h.accession_id = r.check_accession_id as is_check,
             t.unit_id as tray_id, u.label as tray, t.stuck_on, c.on_date as counted_on,
             t.stuck + coalesce(x.cuttings, 0) as stuck,
             c.rooted + c.taken_out_rooted as rooted, c.rooted as left_rooted, c.root_score,
             w.alive as alive14, case when v.counts = false then v.reason end as void_reason
      from counted c
      join tray t on t.unit_id = c.tray_id
      join unit u on u.id = t.unit_id
      join batch b on b.id = t.batch_id
      join sticking_run r on r.id = b.run_id
      join crop on crop.id = r.crop_id
      join holding h on h.unit_id = t.unit_id and h.from_date <= c.on_date and c.on_date < h.until_date
      left join ruled v on v.tray_id = t.unit_id and v.latest = 1
      left join weaned w on w.tray_id = t.unit_id and w.nearest = 1
      left join changed x on x.tray_id = t.unit_id
      where c.standing = 1 and t.stuck + coalesce(x.cuttings, 0) > 0
      """;

  private final JdbcClient jdbc;

  TrayOutcomes(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The trays of these accessions, and of the bench checks in the same runs. */
  List<TrayOutcome> of(Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return List.of();
    }
    return jdbc.sql(
            """
            select * from (%s) outcome
            where accession_id in (:accessions)
               or (is_check and run_id in (select b.run_id from holding h
                                           join tray t on t.unit_id = h.unit_id
                                           join batch b on b.id = t.batch_id
                                           where h.accession_id in (:accessions)))
            order by run_from desc, run, tray
            """
                .formatted(COUNTED))
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(TrayOutcome.class)
        .list();
  }

  /** All counted trays of a run. */
  List<TrayOutcome> ofRun(UUID runId, LocalDate asOf) {
    return jdbc.sql(
            "select * from (%s) outcome where run_id = :run order by tray".formatted(COUNTED))
        .param("run", runId)
        .param("asOf", asOf)
        .query(TrayOutcome.class)
        .list();
  }

  /** All counted trays of the nursery. */
  List<TrayOutcome> all(LocalDate asOf) {
    return jdbc.sql("select * from (%s) outcome order by run_from, tray".formatted(COUNTED))
        .param("asOf", asOf)
        .query(TrayOutcome.class)
        .list();
  }
}
