package trialwood.candidate;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.candidate.CandidateEvent.Kind;

/** Which candidates bear a mark on a day: the latest event of its kind decides. */
@Component
public class CandidateMarks {

  private final JdbcClient jdbc;

  CandidateMarks(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** Those in which the breeder sees something outstanding. */
  public Set<UUID> outstanding(Set<UUID> accessions, LocalDate asOf) {
    return marked(accessions, asOf, Kind.MARKED_OUTSTANDING, Kind.NO_LONGER_OUTSTANDING);
  }

  /** Those whose identity waits for somebody to confirm it in flower. */
  public Set<UUID> provisional(Set<UUID> accessions, LocalDate asOf) {
    return marked(accessions, asOf, Kind.IDENTITY_PROVISIONAL, Kind.IDENTITY_CONFIRMED);
  }

  private Set<UUID> marked(Set<UUID> accessions, LocalDate asOf, Kind on, Kind off) {
    if (accessions.isEmpty()) {
      return Set.of();
    }
    return jdbc
        .sql(
            """
            select accession_id
            from (select accession_id, kind,
                         row_number() over (partition by accession_id
                                            order by on_date desc, recorded_at desc, id desc) as latest
                  from candidate_event
                  where accession_id in (:accessions) and on_date <= :asOf and kind in (:on, :off)) e
            where latest = 1 and kind = :on
            """)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .param("on", on.name())
        .param("off", off.name())
        .query(UUID.class)
        .list()
        .stream()
        .collect(Collectors.toUnmodifiableSet());
  }
}
