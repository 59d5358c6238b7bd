package trialwood.unit;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.NativeQuery;

/** Contradictions that were seen, answered or not. */
public interface Doubts extends JpaRepository<Doubt, UUID> {

  List<Doubt> findByUnitIdOrderByOnDate(UUID unitId);

  boolean existsByUnitIdAndOnDateAndQuestion(UUID unitId, LocalDate onDate, String question);

  List<Doubt> findByUnitIdInOrderByOnDate(Collection<UUID> unitIds);

  List<Doubt> findByCorrectionIdOrderByOnDate(UUID correctionId);

  /** Open questions between two units, one of them among these, that are of one accession now. */
  @NativeQuery(
      """
      select d.* from doubt d
      join holding mine on mine.unit_id = d.unit_id
        and mine.from_date <= d.on_date and d.on_date < mine.until_date
      join holding other on other.unit_id = d.other_unit_id
        and other.from_date <= d.on_date and d.on_date < other.until_date
      where d.answer is null and mine.accession_id = other.accession_id
        and (d.unit_id in (:units) or d.other_unit_id in (:units))
      """)
  List<Doubt> agreeingNow(Collection<UUID> units);
}
