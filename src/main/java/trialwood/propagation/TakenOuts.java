package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Everything taken out of trays before their final count. */
public interface TakenOuts extends JpaRepository<TakenOut, UUID> {

  /** Those that nothing has superseded, in order of their days. */
  @Query(
      """
      select t from TakenOut t where t.trayId = :trayId
        and not exists (select 1 from TakenOut s where s.supersedesId = t.id)
      order by t.onDate, t.recorded.recordedAt
      """)
  List<TakenOut> standing(UUID trayId);

  /** All of them, also those that were replaced. */
  List<TakenOut> findByTrayIdOrderByOnDateAscRecordedRecordedAtAsc(UUID trayId);

  boolean existsBySupersedesId(UUID earlier);

  /** The sum of those that stand. */
  default TakenSoFar soFar(UUID trayId) {
    return sum(standing(trayId));
  }

  /** The sum of those that stand, up to a day. */
  default TakenSoFar soFar(UUID trayId, LocalDate day) {
    return sum(standing(trayId).stream().filter(out -> !out.onDate().isAfter(day)).toList());
  }

  private static TakenSoFar sum(List<TakenOut> taken) {
    return new TakenSoFar(
        taken.stream().mapToInt(TakenOut::number).sum(),
        taken.stream().filter(TakenOut::isRooted).mapToInt(TakenOut::number).sum());
  }
}
