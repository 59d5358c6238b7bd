package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** How good the newest graded lot of each accession was, in one statement. */
@Component
class GradeEvidence {

  /**
   * A count that says how many were saleable is a grading, too; a real one of its day goes before.
   */
  private static final String GRADINGS =
      """
      select c.lot_id, c.on_date, c.recorded_at, 0 as apart, c.alive as graded, c.saleable as good
      from lot_count c
      where c.saleable is not null
        and not exists (select 1 from lot_count later where later.supersedes_id = c.id)
      union all
      select g.lot_id, g.on_date, g.recorded_at, 1, g.grade_a + g.grade_b + g.grade_c, g.grade_a
      from lot_grade g
      where g.grade_a is not null
        and not exists (select 1 from lot_grade later where later.supersedes_id = g.id)
      """;

  private static final String ROOT_BALLS =
      """
      select g.lot_id, g.on_date, g.recorded_at, 1 as apart, 1 as graded, g.root_ball as good
      from lot_grade g
      where g.root_ball is not null
        and not exists (select 1 from lot_grade later where later.supersedes_id = g.id)
      """;

  private static final String NEWEST =
      """
      select n.accession_id, u.label, n.on_date, n.graded, n.good, n.good as root_ball
      from (
        select h.accession_id, g.lot_id, g.on_date, g.graded, g.good,
               row_number() over (
                 partition by h.accession_id
                 order by l.potted_on desc, l.unit_id, g.on_date desc, g.apart desc,
                          g.recorded_at desc) as place
        from (%s) g
        join lot l on l.unit_id = g.lot_id
        join holding h on h.unit_id = l.unit_id
          and h.from_date <= g.on_date and h.until_date > g.on_date
        where h.accession_id in (:accessions) and g.on_date <= :asOf
          and case when exists (select 1 from lot_source s
                       join lot smaller on smaller.unit_id = s.source_id
                       where s.lot_id = l.unit_id) then 1 else 0 end = :shifted
      ) n
      join unit u on u.id = n.lot_id
      where n.place = 1
      """;

  private final JdbcClient jdbc;

  GradeEvidence(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * @param good those that could be sold
   */
  record Graded(UUID accessionId, String label, LocalDate onDate, int graded, int good) {}

  /**
   * @param rootBall 0 to 5
   */
  record Rooted(UUID accessionId, String label, LocalDate onDate, int rootBall) {}

  /**
   * @param shifted lots whose plants came out of smaller lots, or else those from trays or bought
   */
  List<Graded> newest(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return ask(GRADINGS, accessions, asOf, shifted).query(Graded.class).list();
  }

  List<Rooted> rootBalls(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return ask(ROOT_BALLS, accessions, asOf, shifted).query(Rooted.class).list();
  }

  private JdbcClient.StatementSpec ask(
      String gradings, Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return jdbc.sql(NEWEST.formatted(gradings))
        .param("accessions", accessions)
        .param("asOf", asOf)
        .param("shifted", shifted ? 1 : 0);
  }
}
