package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All counts of lots. */
public interface LotCounts extends JpaRepository<LotCount, UUID> {

  List<LotCount> findByLotIdOrderByOnDate(UUID lotId);

  boolean existsBySupersedesId(UUID earlier);

  /** The count before a day that stands, if any. */
  default Optional<LotCount> lastBefore(UUID lotId, LocalDate day) {
    return standingBefore(lotId, day, Limit.of(1)).stream().findFirst();
  }

  /** The last count of that very day that stands, if any. */
  default Optional<LotCount> standingOn(UUID lotId, LocalDate day) {
    return standingBefore(lotId, day.plusDays(1), Limit.of(1)).stream()
        .filter(count -> count.onDate().equals(day))
        .findFirst();
  }

  @Query(
      """
      select c from LotCount c
      where c.lotId = :lotId and c.onDate < :day
        and not exists (select 1 from LotCount later where later.supersedesId = c.id)
      order by c.onDate desc, c.recorded.recordedAt desc
      """)
  List<LotCount> standingBefore(UUID lotId, LocalDate day, Limit limit);
}
