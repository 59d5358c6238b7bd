package trialwood.stock;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** All that happened to stock plants. */
public interface StockEvents extends JpaRepository<StockEvent, UUID> {

  boolean existsBySupersedesId(UUID earlier);

  /** Those of one plant that nobody has replaced. */
  @Query(
      """
      select e from StockEvent e
      where e.stockId = :stockId
        and not exists (select 1 from StockEvent later where later.supersedesId = e.id)
      order by e.onDate, e.recorded.recordedAt
      """)
  List<StockEvent> standing(UUID stockId);
}
