package trialwood.note;

import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;

/** What was noted about an accession, and about its units on the days they were its own. */
@Component
class NoteLife implements LifeLineSource {

  private final JdbcClient jdbc;

  NoteLife(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  @Override
  public List<LifeEvent> events(UUID accessionId) {
    return jdbc.sql(
            """
            select n.on_date as date, 'note' as place, n.words || pictured.words as sentence, n.href
            from (select n.id, n.on_date, n.words, '/notes/accession/' || a.code as href
                  from note n join accession a on a.id = n.accession_id
                  where a.id = :accession
                  union all
                  select n.id, n.on_date, u.label || ': ' || n.words, '/notes/unit/' || u.label
                  from note n
                  join unit u on u.id = n.unit_id
                  join holding h on h.unit_id = u.id
                                and h.from_date <= n.on_date and n.on_date < h.until_date
                  where h.accession_id = :accession) n
            join (select n.id, case count(f.id) when 0 then '' when 1 then ' (photograph)'
                               else ' (' || count(f.id) || ' photographs)' end as words
                  from note n left join photograph f on f.note_id = n.id
                  group by n.id) pictured on pictured.id = n.id
            where not exists (select 1 from note s where s.supersedes_id = n.id)
            """)
        .param("accession", accessionId)
        .query(LifeEvent.class)
        .list();
  }
}
