package trialwood.propagation;

import java.util.List;
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

  boolean existsBySupersedesId(UUID earlier);
}
