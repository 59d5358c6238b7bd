package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What stands on the benches. A tray stands there from the day it was stuck until its last mist, or
 * until it was closed with nothing rooted or declared void.
 */
@Repository
public class BenchSpace {

  private static final String STANDING =
      """
      with moved as (
        select p.tray_id, p.bench_id, p.place,
               row_number() over (partition by p.tray_id
                                  order by p.from_date desc, p.recorded_at desc, p.id desc) as latest
        from tray_place p
        where p.from_date <= :day
      ), ruled as (
        select tray_id, counts, on_date,
               row_number() over (partition by tray_id order by on_date desc, recorded_at desc, id desc) as latest
        from tray_ruling
      ), off as (
        select gone.tray_id, min(gone.on_date) as on_date
        from (
          select w.tray_id, w.last_mist as on_date from weaning w
          where not exists (select 1 from weaning s where s.supersedes_id = w.id)
          union all
          select f.tray_id, f.on_date from final_count f
          where f.rooted = 0
            and not exists (select 1 from superseded_count s where s.count_id = f.id)
          union all
          select r.tray_id, r.on_date from ruled r where r.latest = 1 and not r.counts
        ) gone
        group by gone.tray_id
      )
      select t.unit_id as tray_id, u.label as tray, a.id as accession_id, a.code as accession,
             a.id = r.check_accession_id as is_check, r.code as run,
             coalesce(m.bench_id, k.bench_id) as bench_id, t.block,
             coalesce(cast(m.place as varchar(10)), t.place) as place,
             t.cells, t.stuck + coalesce(c.cuttings, 0) as stuck, t.stuck_on
      from tray t
      join unit u on u.id = t.unit_id
      join batch b on b.id = t.batch_id
      join sticking_run r on r.id = b.run_id
      join holding h on h.unit_id = t.unit_id and h.from_date <= :day and :day < h.until_date
      join accession a on a.id = h.accession_id
      left join moved m on m.tray_id = t.unit_id and m.latest = 1
      left join bench_block k on k.run_id = r.id and k.block = t.block
      left join off o on o.tray_id = t.unit_id
      left join (select x.tray_id, sum(x.cuttings) as cuttings from tray_change x
                 where x.on_date <= :day group by x.tray_id) c on c.tray_id = t.unit_id
      where t.stuck_on <= :day and (o.on_date is null or o.on_date > :day)
        and t.stuck + coalesce(c.cuttings, 0) > 0
      order by r.from_date, u.label
      """;

  private final JdbcClient jdbc;

  BenchSpace(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The trays that stand on benches at the end of a day. */
  public List<StandingTray> on(LocalDate day) {
    return jdbc.sql(STANDING).param("day", day).query(StandingTray.class).list();
  }
}
