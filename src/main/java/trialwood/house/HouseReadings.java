package trialwood.house;

import java.util.List;
import java.util.UUID;
import org.springframework.data.domain.Limit;
import org.springframework.data.jpa.repository.JpaRepository;

/** What was read off in the houses. */
public interface HouseReadings extends JpaRepository<HouseReading, UUID> {

  /** The log of a house, newest first, corrected ones too. */
  List<HouseReading> findByHouseIdOrderByReadAtDescRecordedRecordedAtDesc(
      UUID houseId, Limit limit);

  boolean existsBySupersedesId(UUID earlier);
}
