package trialwood.propagation;

import java.time.LocalDate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rounds along the benches, read off what is recorded about each tray in one statement. */
@Repository
public class Rounds {

  /** A tray that nobody touched for so long, closed or void, is no longer gone to. */
  private static final int DAYS_KEPT = 60;

  private final JdbcClient jdbc;

  Rounds(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The round of a day along all benches, in bench order. */
  public Round on(LocalDate today) {
    return new Round(
        jdbc
            .sql(
                """
                with standing as (
                  select f.tray_id, count(*) as counts, max(f.on_date) as closed_on
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
                  select tray_id, on_date, last_mist,
                         row_number() over (partition by tray_id order by on_date desc, recorded_at desc) as latest
                  from weaning w
                  where not exists (select 1 from weaning s where s.supersedes_id = w.id)
                ), asked as (
                  select unit_id, id, question,
                         row_number() over (partition by unit_id order by on_date, id) as nth
                  from doubt where answer is null
                )
                select u.label as tray, r.code as run, r.bench, t.block, t.place, a.code as accession,
                       t.stuck_on, crop.look_days, l.last_look, coalesce(c.counts, 0) as counts,
                       c.closed_on, w.last_mist, w.on_date as last_weaned,
                       case when v.counts = false then v.reason end as void_reason,
                       q.id as doubt_id, q.question
                from tray t
                join unit u on u.id = t.unit_id
                join batch b on b.id = t.batch_id
                join sticking_run r on r.id = b.run_id
                join crop on crop.id = r.crop_id
                join holding h on h.unit_id = t.unit_id and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
                join accession a on a.id = h.accession_id
                left join standing c on c.tray_id = t.unit_id
                left join ruled v on v.tray_id = t.unit_id and v.latest = 1
                left join looked l on l.tray_id = t.unit_id
                left join weaned w on w.tray_id = t.unit_id and w.latest = 1
                left join asked q on q.unit_id = t.unit_id and q.nth = 1
                where (c.closed_on is null or c.closed_on >= :since or c.counts > 1)
                  and (coalesce(v.counts, true) or t.stuck_on >= :since)
                order by r.bench, length(t.block), t.block, length(t.place), t.place, u.label
                """)
            .param("since", today.minusDays(DAYS_KEPT))
            .query(StandingTray.class)
            .list()
            .stream()
            .map(tray -> tray.on(today))
            .toList());
  }
}
