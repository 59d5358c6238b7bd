package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All weaning counts. */
public interface Weanings extends JpaRepository<Weaning, UUID> {

  /** Those that nothing has superseded, in order of their days. */
  @Query(
      """
      select w from Weaning w where w.trayId = :trayId
        and not exists (select 1 from Weaning s where s.supersedesId = w.id)
      order by w.onDate, w.recorded.recordedAt
      """)
  List<Weaning> standing(UUID trayId);

  /** All of them, also those that were replaced. */
  List<Weaning> findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(UUID trayId);

  /** The last mist that was noted last for a tray of a run. */
  @Query(
      """
      select max(w.lastMist) from Weaning w, Tray t, Batch b
      where t.unitId = w.trayId and b.id = t.batchId and b.runId = :runId
      """)
  Optional<LocalDate> lastMistIn(UUID runId);

  boolean existsBySupersedesId(UUID earlier);
}
