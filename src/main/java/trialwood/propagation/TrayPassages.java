package trialwood.propagation;

import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.NativeQuery;

/** All cuttings that went from tray to tray. */
public interface TrayPassages extends JpaRepository<TrayPassage, UUID> {

  /** By how many a tray had grown or shrunk at the end of a day. */
  @NativeQuery(
      "select coalesce(sum(c.cuttings), 0) from tray_change c where c.tray_id = :trayId and c.on_date <= :day")
  int changed(UUID trayId, LocalDate day);

  /** Dead ones that looks took out of a tray, and what was taken out alive. */
  @NativeQuery(
      """
      select coalesce((select sum(l.dead_removed) from tray_look l
                       where l.tray_id = :trayId
                         and not exists (select 1 from tray_look s where s.supersedes_id = l.id)), 0)
           + coalesce((select sum(o.number) from taken_out o
                       where o.tray_id = :trayId
                         and not exists (select 1 from taken_out s where s.supersedes_id = o.id)), 0)
      """)
  int gone(UUID trayId);

  /** Whether anything was recorded of either tray of a passage after it. */
  @NativeQuery(
      """
      select count(*) > 0 from (
        select tray_id, recorded_at from tray_look
        union all select tray_id, recorded_at from taken_out
        union all select tray_id, recorded_at from final_count
        union all select from_tray_id, recorded_at from tray_passage
        union all select to_tray_id, recorded_at from tray_passage
      ) later
      where later.tray_id in (:from, :to) and later.recorded_at > :moment
      """)
  boolean followed(UUID from, UUID to, Instant moment);

  /** Whether it was taken back. */
  @NativeQuery("select count(*) > 0 from passage_taken_back b where b.passage_id = :id")
  boolean takenBack(UUID id);
}
