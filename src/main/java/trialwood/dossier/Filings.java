package trialwood.dossier;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Query;

/** What was filed, of all candidates. */
public interface Filings extends JpaRepository<Filing, UUID> {

  /** Those that stand, up to that day, oldest first. */
  @Query(
      """
      select f from Filing f
      where f.accessionId in :accessions and f.onDate <= :asOf
        and not f.struckOut
        and not exists (select 1 from Filing n where n.supersedesId = f.id)
      order by f.onDate, f.id
      """)
  List<Filing> standing(Collection<UUID> accessions, LocalDate asOf);

  /** All of one candidate, replaced ones too, by the day it happened. */
  List<Filing> findByAccessionIdOrderByOnDateAscIdAsc(UUID accession);

  boolean existsBySupersedesId(UUID earlier);
}
