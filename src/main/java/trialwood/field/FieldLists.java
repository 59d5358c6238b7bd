package trialwood.field;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;

/** What hangs in the field, as lists. */
@Repository
public class FieldLists implements LifeLineSource {

  private final JdbcClient jdbc;

  FieldLists(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** A tag in the list of a population. */
  public record TagLine(
      String code,
      @Nullable String talkName,
      int row,
      int position,
      LocalDate taggedOn,
      @Nullable String by,
      String seen) {}

  /** The tags of a population, in walking order. */
  public List<TagLine> tagsOf(UUID populationId) {
    return jdbc.sql(
            """
            select a.code, a.talk_name, f.row_number as "row", f.position_number as "position",
                   f.tagged_on, p.initials as "by", f.seen
            from field_tag f
            join accession a on a.id = f.accession_id
            left join person p on p.id = f.person_id
            where f.population_id = :population
            order by f.row_number, f.position_number
            """)
        .param("population", populationId)
        .query(TagLine.class)
        .list();
  }

  @Override
  public List<LifeEvent> events(UUID accessionId) {
    return jdbc.sql(
            """
            select f.tagged_on as date, 'field' as place,
                   'tagged in row ' || f.row_number || ', position ' || f.position_number
                     || ': ' || f.seen as sentence,
                   '/field/' || p.code as href
            from field_tag f join population p on p.id = f.population_id
            where f.accession_id = :accession
            """)
        .param("accession", accessionId)
        .query(LifeEvent.class)
        .list();
  }
}
