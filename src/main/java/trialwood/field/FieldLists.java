package trialwood.field;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;
import trialwood.web.Measures;

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
    List<LifeEvent> events = new ArrayList<>(tag(accessionId));
    events.addAll(seasons(accessionId));
    return events;
  }

  private List<LifeEvent> tag(UUID accessionId) {
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

  private record Dated(String trait, LocalDate day, String position) {}

  /** Dates that come once a year, such as the first flower: all years on one line. */
  private List<LifeEvent> seasons(UUID accessionId) {
    return jdbc
        .sql(
            """
            select t.name as trait, o.date_value as "day", u.label as position
            from observation o
            join unit u on u.id = o.unit_id and u.kind = 'POSITION'
            join trait t on t.id = o.trait_id
            join holding h on h.unit_id = o.unit_id and h.from_date <= o.on_date and o.on_date < h.until_date
            where h.accession_id = :accession and o.date_value is not null
              and not exists (select 1 from observation s where s.supersedes_id = o.id)
            order by o.date_value
            """)
        .param("accession", accessionId)
        .query(Dated.class)
        .list()
        .stream()
        .collect(Collectors.groupingBy(Dated::trait))
        .values()
        .stream()
        .map(FieldLists::onOneLine)
        .toList();
  }

  private static LifeEvent onOneLine(List<Dated> years) {
    Dated last = years.get(years.size() - 1);
    String days =
        years.stream().map(year -> Measures.day(year.day())).collect(Collectors.joining(", "));
    return new LifeEvent(
        last.day(), "field", last.trait() + ": " + days, "/field/" + last.position().split("/")[0]);
  }
}
