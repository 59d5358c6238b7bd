package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Recorder;
import trialwood.record.Refused;

/** Takes back a batch that was entered by mistake, as long as nothing was recorded on it. */
@Service
public class TakingBack {

  private final Batches batches;
  private final SessionLists lists;
  private final UndoneBatches undone;
  private final Recorder recorder;
  private final JdbcClient jdbc;

  TakingBack(
      Batches batches,
      SessionLists lists,
      UndoneBatches undone,
      Recorder recorder,
      JdbcClient jdbc) {
    this.batches = batches;
    this.lists = lists;
    this.undone = undone;
    this.recorder = recorder;
    this.jdbc = jdbc;
  }

  /**
   * Takes the last batch of a run back, trays and all; a line about it stays.
   *
   * @throws Refused when it is not the last one, or something was recorded on it
   */
  @Transactional
  public SessionBatch undo(StickingRun run, String code) {
    List<SessionBatch> all = lists.batches(run);
    SessionBatch last =
        all.stream()
            .skip(Math.max(0, all.size() - 1))
            .filter(batch -> batch.code().equals(code))
            .findFirst()
            .orElseThrow(() -> new Refused("batch", "Only the last batch can be taken back."));
    undone.saveAndFlush(
        new UndoneBatch(batches.findById(last.batchId()).orElseThrow(), last, recorder.by(null)));
    try {
      delete(last.batchId());
    } catch (DataIntegrityViolationException used) {
      throw new Refused(
          "batch", "Something was recorded on %s already; it stays.".formatted(last.code()));
    }
    return last;
  }

  /** Whatever was recorded on a tray points at it: the database refuses to let it go. */
  private void delete(UUID batch) {
    List<UUID> units =
        jdbc.sql("select unit_id from tray where batch_id = :batch")
            .param("batch", batch)
            .query(UUID.class)
            .list();
    for (String table : new String[] {"holding", "tie", "tray"}) {
      jdbc.sql("delete from %s where unit_id in (:units)".formatted(table))
          .param("units", units)
          .update();
    }
    jdbc.sql("delete from unit where id in (:units)").param("units", units).update();
    jdbc.sql("delete from batch where id = :batch").param("batch", batch).update();
  }
}
