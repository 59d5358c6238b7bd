package trialwood.propagation;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Modifying;
import org.springframework.data.jpa.repository.NativeQuery;
import org.springframework.data.jpa.repository.Query;

/** All final counts. */
public interface FinalCounts extends JpaRepository<FinalCount, UUID> {

  List<FinalCount> findByTrayIdOrderByRecordedRecordedAt(UUID trayId);

  /** Those that nothing has superseded; more than one is a conflict for a person to settle. */
  @NativeQuery(
      """
      select f.* from final_count f where f.tray_id = :trayId
        and not exists (select 1 from superseded_count s where s.count_id = f.id)
      order by f.recorded_at
      """)
  List<FinalCount> standing(UUID trayId);

  /** Lets a count take the place of another. */
  @Modifying
  @Query(
      nativeQuery = true,
      value = "insert into superseded_count (count_id, by_id) values (:earlier, :by)")
  void supersede(UUID earlier, UUID by);
}
