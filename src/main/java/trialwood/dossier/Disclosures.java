package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** What was disclosed, of all candidates. */
public interface Disclosures extends JpaRepository<Disclosure, UUID> {

  /** Those that stand, up to that day, oldest first. */
  @Query(
      """
      select d from Disclosure d
      where d.accessionId in :accessions and d.onDate <= :asOf
        and not d.struckOut
        and not exists (select 1 from Disclosure n where n.supersedesId = d.id)
      order by d.onDate, d.id
      """)
  List<Disclosure> standing(Collection<UUID> accessions, LocalDate asOf);

  /** All of one candidate, replaced ones too, by the day it happened. */
  List<Disclosure> findByAccessionIdOrderByOnDateAscIdAsc(UUID accession);

  boolean existsBySupersedesId(UUID earlier);
}
