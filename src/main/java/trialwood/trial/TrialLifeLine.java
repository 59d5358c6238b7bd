package trialwood.trial;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;

/** Tells where an accession was planted in trials. */
@Component
class TrialLifeLine implements LifeLineSource {

  private final JdbcClient jdbc;

  TrialLifeLine(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  @Override
  public List<LifeEvent> events(UUID accessionId) {
    return jdbc.sql(
            """
            select t.code, s.name, ts.planted_on, count(*) as plots, sum(p.plants) as plants
            from trial_entry e
            join trial t on t.id = e.trial_id
            join plot p on p.entry_id = e.id
            join trial_site ts on ts.id = p.trial_site_id
            join site s on s.id = ts.site_id
            where e.accession_id = :accession
            group by t.code, s.name, ts.planted_on
            """)
        .param("accession", accessionId)
        .query(
            (row, n) ->
                new LifeEvent(
                    row.getObject("planted_on", LocalDate.class),
                    "trial",
                    "Planted in trial %s at %s: %d plots, %d plants"
                        .formatted(
                            row.getString("code"),
                            row.getString("name"),
                            row.getInt("plots"),
                            row.getInt("plants")),
                    "/trials/" + row.getString("code")))
        .list();
  }
}
