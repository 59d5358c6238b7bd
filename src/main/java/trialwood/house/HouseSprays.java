package trialwood.house;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** What was sprayed in the houses. */
public interface HouseSprays extends JpaRepository<HouseSpray, UUID> {

  /** The log of a house, newest first, corrected ones too. */
  List<HouseSpray> findByHouseIdOrderByEndedAtDescRecordedRecordedAtDesc(UUID houseId, Limit limit);

  /** Houses where somebody may not yet go in, and until when; one row a house. */
  @Query(
      """
      select h.name as house, max(s.reEntryAt) as until
      from HouseSpray s join House h on h.id = s.houseId
      where s.reEntryAt > :now
        and not exists (select 1 from HouseSpray n where n.supersedesId = s.id)
      group by h.name
      order by h.name
      """)
  List<Closed> closedAt(Instant now);

  boolean existsBySupersedesId(UUID earlier);

  /** A house that nobody may go into before {@code until}. */
  record Closed(String house, Instant until) {}
}
