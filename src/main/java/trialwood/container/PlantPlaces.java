package trialwood.container;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** Where all numbered plants stood, from when. */
public interface PlantPlaces extends JpaRepository<PlantPlace, UUID> {

  List<PlantPlace> findByPlantIdInOrderByFromDate(Collection<UUID> plantIds);

  /** The numbered plants that stand in a lot at the end of a day. */
  @Query(
      """
      select p.plantId from PlantPlace p
      where p.lotId = :lotId and p.fromDate <= :day
        and not exists (select 1 from PlantPlace later
                        where later.plantId = p.plantId
                          and later.fromDate > p.fromDate and later.fromDate <= :day)
      """)
  Set<UUID> standing(UUID lotId, LocalDate day);
}
