package trialwood.gate;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.EntityGraph;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** The policies of all crops, every version. */
public interface GatePolicies extends JpaRepository<GatePolicy, UUID> {

  /** The policy in force for each of the crops on a day; a crop without one is missing. */
  @EntityGraph(attributePaths = "criteria")
  @Query(
      """
      from GatePolicy p
      where p.cropId in :crops and p.inForceFrom <= :day
        and not exists (from GatePolicy later
                        where later.cropId = p.cropId and later.inForceFrom <= :day
                          and (later.inForceFrom > p.inForceFrom
                               or later.inForceFrom = p.inForceFrom and later.number > p.number))
      """)
  List<GatePolicy> inForce(Collection<UUID> crops, LocalDate day);
}
