package trialwood.note;

import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.record.CodeKey;

/** Finds what a note is about by the code that people know it by. */
@Component
public class Subjects {

  private static final Map<Subject.Kind, String> QUERIES =
      Map.of(
          Subject.Kind.UNIT,
          """
          select 'UNIT' as kind, u.id, u.label as name,
                 case u.kind when 'TRAY' then '/bench/trays/' when 'LOT' then '/containers/'
                             when 'STOCK' then '/stock/'
                             else '/find?q=' end as place,
                 u.label as code
          from unit u where u.label_key = :key
          """,
          Subject.Kind.ACCESSION,
          """
          select 'ACCESSION' as kind, a.id, a.code as name, '/accessions/' as place, a.code
          from accession a where a.code_key = :key
          """,
          Subject.Kind.RUN,
          """
          select 'RUN' as kind, r.id, 'run ' || r.code as name, '/bench/runs/' as place, r.code
          from sticking_run r where r.code = :code
          """,
          Subject.Kind.SITE,
          """
          select 'SITE' as kind, s.id, s.name, '/ground/sites/' as place, s.code
          from site s where s.code = :code
          """,
          Subject.Kind.HOUSE,
          """
          select 'HOUSE' as kind, h.id, h.name, '/houses/' as place, h.name as code
          from house h where h.name_key = :key
          """);

  private final JdbcClient jdbc;

  Subjects(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  public Optional<Subject> named(Subject.Kind kind, String code) {
    String query = QUERIES.get(kind);
    JdbcClient.StatementSpec asked = jdbc.sql(query);
    return (query.contains(":key")
            ? asked.param("key", CodeKey.of(code))
            : asked.param("code", code.strip()))
        .query(Subject.class)
        .optional();
  }
}
