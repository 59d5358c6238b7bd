package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All plants that left lots. */
public interface LotOutgoings extends JpaRepository<LotOutgoing, UUID> {

  List<LotOutgoing> findByLotIdOrderByOnDate(UUID lotId);

  /** Those of one day that nothing has superseded. */
  @Query(
      """
      select o from LotOutgoing o
      where o.lotId = :lotId and o.onDate = :day
        and not exists (select 1 from LotOutgoing n where n.supersedesId = o.id)
      """)
  List<LotOutgoing> ofDay(UUID lotId, LocalDate day);
}
