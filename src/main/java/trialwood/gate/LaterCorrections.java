package trialwood.gate;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.candidate.Stage;

/**
 * Decisions behind which labels were put right later: they were made on records of a unit, in the
 * days that the correction speaks of, while the unit passed for another accession. Such a decision
 * is of the one accession or of the other, or it cites the unit.
 */
@Repository
public class LaterCorrections {

  private static final String TOUCHED =
      """
      select distinct d.id as decision_id, t.correction_id, t.said_on, a.code, d.gate, d.on_date, d.choice
      from tie t
      join unit u on u.id = t.unit_id
      join decision d on (t.said_on > d.on_date or t.said_on = d.on_date and t.recorded_at > d.recorded_at)
      join accession a on a.id = d.accession_id
      where t.correction_id is not null
        and exists (select 1 from unit_record r
                    where r.unit_id = t.unit_id and r.on_date >= t.from_date
                      and (t.until_date is null or r.on_date < t.until_date)
                      and r.on_date <= d.on_date)
        and (d.accession_id = t.accession_id
             or d.accession_id in (select e.accession_id from tie e where e.unit_id = t.unit_id and e.id < t.id)
             or cast(d.evidence as varchar) like '%/' || u.label || '"%')
      """;

  private final JdbcClient jdbc;

  LaterCorrections(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** A decision and a correction behind it. */
  public record Touched(
      UUID decisionId,
      UUID correctionId,
      LocalDate saidOn,
      String code,
      Stage gate,
      LocalDate onDate,
      Choice choice) {}

  /** The decisions behind which this correction reached. */
  public List<Touched> of(UUID correction) {
    return jdbc.sql(TOUCHED + " and t.correction_id = :correction order by d.on_date, a.code")
        .param("correction", correction)
        .query(Touched.class)
        .list();
  }

  /** The corrections that reached behind these decisions, by decision. */
  public Map<UUID, List<Touched>> behind(Collection<UUID> decisions) {
    if (decisions.isEmpty()) {
      return Map.of();
    }
    return jdbc
        .sql(TOUCHED + " and d.id in (:decisions) order by t.said_on")
        .param("decisions", decisions)
        .query(Touched.class)
        .list()
        .stream()
        .collect(Collectors.groupingBy(Touched::decisionId));
  }
}
