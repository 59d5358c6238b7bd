package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What stands on the bench, as lists. */
@Repository
public class BenchLists {

  private static final String LINES =
      """
      with standing as (
        select f.tray_id, count(*) as counts, max(f.rooted + f.taken_out_rooted) as rooted
        from final_count f
        where not exists (select 1 from superseded_count s where s.count_id = f.id)
        group by f.tray_id
      ), ruled as (
        select tray_id, counts, reason,
               row_number() over (partition by tray_id order by on_date desc, recorded_at desc, id desc) as latest
        from tray_ruling
      ), looked as (
        select l.tray_id, max(l.on_date) as last_look from tray_look l
        where not exists (select 1 from tray_look s where s.supersedes_id = l.id)
        group by l.tray_id
      ), weaned as (
        select tray_id, alive,
               row_number() over (partition by tray_id order by on_date, recorded_at desc) as nearest
        from weaning w
        where on_date >= last_mist + 14
          and not exists (select 1 from weaning s where s.supersedes_id = w.id)
      ), moved as (
        select p.tray_id, b.code || ' ' || p.place as place,
               row_number() over (partition by p.tray_id
                                  order by p.from_date desc, p.recorded_at desc, p.id desc) as latest
        from tray_place p join bench b on b.id = p.bench_id
      )
      select t.unit_id as tray_id, u.label as tray, r.code as run, a.code as accession,
             a.id as accession_id, a.talk_name,
             a.id = r.check_accession_id as is_check, t.block,
             coalesce(m.place, t.place) as place, t.stuck_on,
             t.stuck + coalesce((select sum(x.cuttings) from tray_change x where x.tray_id = t.unit_id), 0) as stuck,
             l.last_look, coalesce(c.counts, 0) as standing_counts,
             case when c.counts = 1 then c.rooted end as rooted,
             w.alive as alive14, case when v.counts = false then v.reason end as void_reason
      from tray t
      join unit u on u.id = t.unit_id
      join batch b on b.id = t.batch_id
      join sticking_run r on r.id = b.run_id
      join holding h on h.unit_id = t.unit_id and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
      join accession a on a.id = h.accession_id
      left join standing c on c.tray_id = t.unit_id
      left join ruled v on v.tray_id = t.unit_id and v.latest = 1
      left join looked l on l.tray_id = t.unit_id
      left join weaned w on w.tray_id = t.unit_id and w.nearest = 1
      left join moved m on m.tray_id = t.unit_id and m.latest = 1
      """;

  private static final String RUNS =
      """
      select r.code, r.from_date as "from", r.to_date as "to", r.bench, count(line.tray) as trays,
             coalesce(sum(line.stuck), 0) as stuck,
             count(line.rooted) as closed,
             coalesce(sum(case when line.is_check and line.void_reason is null then line.rooted end), 0) as check_rooted,
             coalesce(sum(case when line.is_check and line.void_reason is null
                                and line.rooted is not null then line.stuck end), 0) as check_stuck,
             crop.check_floor_percent as floor_percent
      from sticking_run r
      join crop on crop.id = r.crop_id
      left join (%s) line on line.run = r.code
      where (cast(:run as varchar) is null or r.code = :run)
      group by r.code, r.from_date, r.to_date, r.bench, crop.check_floor_percent
      order by r.from_date desc, r.code
      """
          .formatted(LINES);

  private final JdbcClient jdbc;

  BenchLists(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A run in the list of runs.
   *
   * @param closed trays with a final count
   * @param checkStuck cuttings of the bench check in trays with a final count
   */
  public record RunLine(
      String code,
      LocalDate from,
      LocalDate to,
      @Nullable String bench,
      int trays,
      int stuck,
      int closed,
      int checkRooted,
      int checkStuck,
      int floorPercent) {

    /** Whether the bench check failed its floor, as far as it has been counted. */
    public boolean isVoid() {
      return checkStuck > 0 && 100.0 * checkRooted / checkStuck < floorPercent;
    }
  }

  /** All runs, the newest first. */
  public List<RunLine> runs() {
    return runs(null).list();
  }

  /** One run. */
  public Optional<RunLine> run(String code) {
    return runs(code).optional();
  }

  private JdbcClient.MappedQuerySpec<RunLine> runs(@Nullable String code) {
    return jdbc.sql(RUNS).param("run", code).query(RunLine.class);
  }

  /** The trays of a run in bench order. */
  public List<TrayLine> traysOf(String run) {
    return jdbc.sql(
            LINES
                + " where r.code = :run order by length(t.block), t.block, length(t.place), t.place, u.label")
        .param("run", run)
        .query(TrayLine.class)
        .list();
  }

  /** One tray. */
  public Optional<TrayLine> tray(UUID trayId) {
    return jdbc.sql(LINES + " where t.unit_id = :tray")
        .param("tray", trayId)
        .query(TrayLine.class)
        .optional();
  }
}
