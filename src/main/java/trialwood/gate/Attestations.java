package trialwood.gate;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** What people said of candidates. */
public interface Attestations extends JpaRepository<Attestation, UUID> {

  /** What was said by that day and not replaced, the oldest first. */
  @Query(
      """
      from Attestation a
      where a.accessionId in :accessions and a.onDate <= :asOf
        and not exists (from Attestation later where later.supersedesId = a.id)
      order by a.onDate, a.id
      """)
  List<Attestation> standing(Collection<UUID> accessions, LocalDate asOf);
}
