package trialwood.propagation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The bench plan of a run as it is read. */
@Repository
public class PlanLists {

  private final JdbcClient jdbc;

  PlanLists(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A place on the plan.
   *
   * @param nth batch of the accession; told apart only where it has several
   * @param tray the tray that was stuck for it, once it is
   * @param moved where the tray stands instead, once somebody set it elsewhere
   */
  public record Spot(
      int block,
      String bench,
      int place,
      String accession,
      boolean isCheck,
      int nth,
      boolean isTwice,
      @Nullable String tray,
      @Nullable Integer stuck,
      @Nullable String moved) {}

  /** The places block by block; the blocks in their order along the gradient. */
  public Map<Integer, List<Spot>> blocks(UUID run) {
    Map<Integer, List<Spot>> blocks = new LinkedHashMap<>();
    spots(run)
        .forEach(
            spot -> blocks.computeIfAbsent(spot.block(), block -> new ArrayList<>()).add(spot));
    return blocks;
  }

  /** Whose cuttings the plan still waits for, in the order of its first block. */
  public List<String> unstuck(UUID run) {
    return spots(run).stream()
        .filter(spot -> spot.tray() == null)
        .map(Spot::accession)
        .distinct()
        .toList();
  }

  private List<Spot> spots(UUID run) {
    return jdbc.sql(
            """
            with stuck as (
              select t.unit_id, u.label, t.stuck, t.block, h.accession_id,
                     dense_rank() over (partition by h.accession_id order by b.id) as nth
              from tray t
              join unit u on u.id = t.unit_id
              join batch b on b.id = t.batch_id
              join holding h on h.unit_id = t.unit_id
                and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
              where b.run_id = :run
            ), moved as (
              select p.tray_id, b.code as bench, p.place,
                     row_number() over (partition by p.tray_id
                                        order by p.from_date desc, p.recorded_at desc, p.id desc) as latest
              from tray_place p join bench b on b.id = p.bench_id
            )
            select p.block, b.code as bench, p.place, a.code as accession,
                   a.id = r.check_accession_id as is_check, p.nth,
                   max(p.nth) over (partition by a.id) > 1 as is_twice, s.label as tray, s.stuck,
                   case when m.place <> p.place or m.bench <> b.code
                        then m.bench || ' ' || m.place end as moved
            from planned_place p
            join sticking_run r on r.id = p.run_id
            join accession a on a.id = p.accession_id
            join bench_block k on k.run_id = p.run_id and k.block = cast(p.block as varchar(10))
            join bench b on b.id = k.bench_id
            left join stuck s on s.accession_id = p.accession_id and s.nth = p.nth
              and s.block = cast(p.block as varchar(10))
            left join moved m on m.tray_id = s.unit_id and m.latest = 1
            where p.run_id = :run
            order by p.block, p.place
            """)
        .param("run", run)
        .query(Spot.class)
        .list();
  }

  /** A place a tray was moved to. */
  public record Stood(LocalDate fromDate, String bench, int place, String reason) {}

  /** Where a tray was moved to, the latest first. */
  public List<Stood> moves(UUID tray) {
    return jdbc.sql(
            """
            select p.from_date, b.code as bench, p.place, p.reason
            from tray_place p join bench b on b.id = p.bench_id
            where p.tray_id = :tray
            order by p.from_date desc, p.recorded_at desc, p.id desc
            """)
        .param("tray", tray)
        .query(Stood.class)
        .list();
  }
}
