package trialwood.propagation;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What a run holds so far, batch by batch, and what is missing in its blocks. */
@Repository
public class SessionLists {

  private final JdbcClient jdbc;

  SessionLists(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** The batches of a run in the order in which they were stuck. */
  public List<SessionBatch> batches(StickingRun run) {
    return jdbc.sql(
            """
            select b.id as batch_id, b.code, a.id as accession_id, a.code as accession,
                   a.id = r.check_accession_id as is_check, b.source, count(*) as trays,
                   max(t.cells) as cells, sum(t.stuck) as stuck, min(t.stuck_on) as stuck_on,
                   sum((select count(*) from tray_look l where l.tray_id = t.unit_id)
                     + (select count(*) from final_count f where f.tray_id = t.unit_id)
                     + (select count(*) from taken_out o where o.tray_id = t.unit_id)
                     + (select count(*) from tray_ruling v where v.tray_id = t.unit_id)
                     + (select count(*) from tray_place p where p.tray_id = t.unit_id)) as recorded,
                   sum(case when t.place is null
                             and not exists (select 1 from tray_place p where p.tray_id = t.unit_id)
                            then 1 else 0 end) as unplaced,
                   b.hormone, b.ppm, b.checked
            from batch b
            join sticking_run r on r.id = b.run_id
            join tray t on t.batch_id = b.id
            join holding h on h.unit_id = t.unit_id
              and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
            join accession a on a.id = h.accession_id
            where r.id = :run
            group by b.id, b.code, a.id, a.code, r.check_accession_id, b.source, b.hormone, b.ppm,
                     b.checked
            order by b.id
            """)
        .param("run", run.id())
        .query(SessionBatch.class)
        .list();
  }

  /**
   * What is missing before the run can be trusted: the check in every block, places drawn by lot.
   *
   * @param check code of the bench check
   */
  public List<String> missing(StickingRun run, String check) {
    List<String> missing = new ArrayList<>();
    List<Block> blocks = blocks(run);
    String without =
        blocks.stream()
            .filter(block -> !block.hasCheck())
            .map(Block::block)
            .collect(Collectors.joining(", "));
    if (blocks.isEmpty()) {
      missing.add("The bench check %s is not stuck yet.".formatted(check));
    } else if (!without.isEmpty()) {
      missing.add("The bench check %s is missing in block %s.".formatted(check, without));
    }
    int unplaced = batches(run).stream().mapToInt(SessionBatch::unplaced).sum();
    if (unplaced > 0) {
      missing.add(
          unplaced == 1
              ? "1 tray has no place on the bench: it was not placed by lot."
              : "%d trays have no place on the bench: they were not placed by lot."
                  .formatted(unplaced));
    }
    return missing;
  }

  /** A block of a run, planned or stuck in, and whether the bench check stands in it. */
  public record Block(String block, boolean hasCheck) {}

  /** A batch that was asked about before it was stored. */
  public record Asked(String code, String asked, String checked) {}

  /** The batches of a run that were asked about. */
  public List<Asked> asked(StickingRun run) {
    return jdbc.sql(
            "select code, asked, checked from batch where run_id = :run and asked is not null order by id")
        .param("run", run.id())
        .query(Asked.class)
        .list();
  }

  /** The blocks of a run in their order. */
  public List<Block> blocks(StickingRun run) {
    UUID id = Objects.requireNonNull(run.id());
    return jdbc.sql(
            """
            select s.block, max(s.checks) > 0 as has_check
            from (
              select k.block, 0 as checks from bench_block k where k.run_id = :run
              union all
              select t.block, case when h.accession_id = :check then 1 else 0 end
              from tray t
              join batch b on b.id = t.batch_id
              join holding h on h.unit_id = t.unit_id
                and h.from_date <= t.stuck_on and t.stuck_on < h.until_date
              where b.run_id = :run and t.block is not null
            ) s
            group by s.block
            order by length(s.block), s.block
            """)
        .param("run", id)
        .param("check", run.checkAccessionId())
        .query(Block.class)
        .list();
  }
}
