package trialwood.propagation;

import java.time.LocalDate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The rounds along the benches, read off what is recorded about each tray in one statement. */
@Repository
public class Rounds {

  private final JdbcClient jdbc;

  Rounds(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * The round of a day along all benches, in bench order. A tray that was set elsewhere is met
   * there.
   */
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
                ), looked as (
                  select l.tray_id, max(l.on_date) as last_look from tray_look l
                  where not exists (select 1 from tray_look s where s.supersedes_id = l.id)
                  group by l.tray_id
                ), moved as (
                  select p.tray_id, b.code as bench, b.house, p.place,
                         row_number() over (partition by p.tray_id
                                            order by p.from_date desc, p.recorded_at desc, p.id desc) as latest
                  from tray_place p join bench b on b.id = p.bench_id
                  where p.from_date <= :today
                )
                select u.label as tray, r.code as run, coalesce(m.house, r.bench) as bench,
                       case when m.tray_id is null then t.block end as block,
                       coalesce(m.bench || ' ' || m.place, t.place) as place, a.code as accession,
                       t.stuck_on, crop.look_days, l.last_look, coalesce(c.counts, 0) as counts,
                       c.closed_on,
                       (select w.last_mist from weaning w
                        where w.tray_id = t.unit_id
                          and not exists (select 1 from weaning s where s.supersedes_id = w.id)
                        order by w.on_date desc, w.recorded_at desc fetch first 1 rows only) as last_mist,
                       (select max(w.on_date) from weaning w
                        where w.tray_id = t.unit_id
                          and not exists (select 1 from weaning s where s.supersedes_id = w.id)) as last_weaned,
                       (select case when not v.counts then v.reason end from tray_ruling v
                        where v.tray_id = t.unit_id
                        order by v.on_date desc, v.recorded_at desc, v.id desc fetch first 1 rows only) as void_reason,
                       (select q.id from doubt q where q.unit_id = t.unit_id and q.answer is null
                        order by q.on_date, q.id fetch first 1 rows only) as doubt_id,
                       (select q.question from doubt q where q.unit_id = t.unit_id and q.answer is null
                        order by q.on_date, q.id fetch first 1 rows only) as question
                from tray t
                join unit u on u.id = t.unit_id
                join batch b on b.id = t.batch_id
                join sticking_run r on r.id = b.run_id
                join crop on crop.id = r.crop_id
                join holding h on h.unit_id = t.unit_id and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
                join accession a on a.id = h.accession_id
                left join standing c on c.tray_id = t.unit_id
                left join looked l on l.tray_id = t.unit_id
                left join moved m on m.tray_id = t.unit_id and m.latest = 1
                left join bench_block k on k.run_id = r.id and k.block = t.block
                left join bench stands on stands.id = k.bench_id
                where (c.closed_on is null or c.closed_on >= :since or c.counts > 1)
                  and t.stuck + coalesce((select sum(x.cuttings) from tray_change x
                                          where x.tray_id = t.unit_id), 0) > 0
                order by coalesce(m.bench, stands.code, r.bench),
                         case when coalesce(m.bench, stands.code) is null then length(t.block) end,
                         case when coalesce(m.bench, stands.code) is null then t.block end,
                         length(coalesce(cast(m.place as varchar(10)), t.place)),
                         coalesce(cast(m.place as varchar(10)), t.place), u.label
                """)
            .param("today", today)
            .param("since", today.minusDays(WatchedTray.DAYS_KEPT))
            .query(WatchedTray.class)
            .list()
            .stream()
            .map(tray -> tray.on(today))
            .toList());
  }
}
