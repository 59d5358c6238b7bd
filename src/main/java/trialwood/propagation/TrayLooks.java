package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All interim looks. */
public interface TrayLooks extends JpaRepository<TrayLook, UUID> {

  /** Those that nothing has superseded, in order of their days. */
  @Query(
      """
      select l from TrayLook l where l.trayId = :trayId
        and not exists (select 1 from TrayLook s where s.supersedesId = l.id)
      order by l.onDate, l.recorded.recordedAt
      """)
  List<TrayLook> standing(UUID trayId);

  /** All of them, also those that were replaced. */
  List<TrayLook> findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(UUID trayId);

  boolean existsBySupersedesId(UUID earlier);
}
