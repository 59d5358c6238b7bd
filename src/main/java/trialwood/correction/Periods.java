package trialwood.correction;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Whose all units are, and when. */
@Repository
class Periods {

  private final JdbcClient jdbc;

  Periods(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** By unit, each in order; a unit of which nothing was said is absent. */
  Map<UUID, List<Period>> of(Collection<UUID> units) {
    if (units.isEmpty()) {
      return Map.of();
    }
    return jdbc
        .sql(
            """
            select h.unit_id, h.from_date as "from", h.until_date as "until", h.accession_id, a.code
            from holding h join accession a on a.id = h.accession_id
            where h.unit_id in (:units)
            order by h.from_date
            """)
        .param("units", units)
        .query(Period.class)
        .list()
        .stream()
        .collect(Collectors.groupingBy(Period::unitId));
  }
}
