package trialwood.correction;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was said of units, as people read it. */
@Repository
class Sayings {

  private static final String SAYING =
      """
      select t.id, t.unit_id, u.label, u.kind, a.code, t.from_date as "from", t.until_date as "until", t.said_on,
             t.reason, t.evidence, coalesce(p.initials, t.account) as said_by, t.correction_id
      from tie t
      join unit u on u.id = t.unit_id
      join accession a on a.id = t.accession_id
      left join person p on p.id = t.person_id
      """;

  private final JdbcClient jdbc;

  Sayings(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * One tie.
   *
   * @param saidBy initials of the person, or the account where nobody was named
   */
  record Saying(
      long id,
      UUID unitId,
      String label,
      String kind,
      String code,
      LocalDate from,
      @Nullable LocalDate until,
      LocalDate saidOn,
      String reason,
      @Nullable String evidence,
      String saidBy,
      @Nullable UUID correctionId) {}

  /** Everything that was said of a unit, the first word first. */
  List<Saying> of(UUID unit) {
    return jdbc.sql(SAYING + " where t.unit_id = :unit order by t.id")
        .param("unit", unit)
        .query(Saying.class)
        .list();
  }

  /** The sayings of one correction. */
  List<Saying> in(UUID correction) {
    return jdbc.sql(SAYING + " where t.correction_id = :correction order by t.id")
        .param("correction", correction)
        .query(Saying.class)
        .list();
  }

  /** The first word about any unit of a correction that was said after it. */
  Optional<Saying> after(UUID correction) {
    return jdbc.sql(
            SAYING
                + """
                 where exists (select 1 from tie c where c.correction_id = :correction and c.unit_id = t.unit_id)
                   and t.id > (select max(c.id) from tie c where c.correction_id = :correction)
                 order by t.id limit 1
                """)
        .param("correction", correction)
        .query(Saying.class)
        .optional();
  }

  /** A question about a unit, with what came of it. */
  record Asked(
      UUID id,
      String label,
      LocalDate onDate,
      String question,
      @Nullable String answer,
      @Nullable UUID correctionId) {}

  /** Questions that a correction answered, the oldest first. */
  List<Asked> answeredBy(UUID correction) {
    return asked("d.correction_id = :id", correction);
  }

  /** Questions about a unit. */
  List<Asked> about(UUID unit) {
    return asked("d.unit_id = :id", unit);
  }

  private List<Asked> asked(String which, UUID id) {
    return jdbc.sql(
            """
            select d.id, u.label, d.on_date, d.question, d.answer, d.correction_id
            from doubt d join unit u on u.id = d.unit_id
            where %s order by d.on_date, d.recorded_at
            """
                .formatted(which))
        .param("id", id)
        .query(Asked.class)
        .list();
  }
}
