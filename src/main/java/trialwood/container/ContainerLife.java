package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;

/** Tells when plants of an accession were potted, shifted, counted, graded, cut and covered. */
@Component
class ContainerLife implements LifeLineSource {

  private final JdbcClient jdbc;

  ContainerLife(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  private record Told(
      LocalDate onDate,
      String what,
      String label,
      String containerClass,
      int number,
      @Nullable Integer saleable) {

    LifeEvent event() {
      String sentence =
          switch (what) {
            case "counted" ->
                saleable == null
                    ? "%d alive in %s, lot %s".formatted(number, containerClass, label)
                    : "%d alive in %s, %d saleable, lot %s"
                        .formatted(number, containerClass, saleable, label);
            case "graded" ->
                "%d of %d grade A in %s, lot %s".formatted(saleable, number, containerClass, label);
            case "PINCHED", "PRUNED", "COVERED", "UNCOVERED" ->
                "%s in %s, lot %s".formatted(CareKind.valueOf(what).word(), containerClass, label);
            case "shifted" -> "%d shifted to %s, lot %s".formatted(number, containerClass, label);
            default -> "%d potted in %s, lot %s".formatted(number, containerClass, label);
          };
      return new LifeEvent(onDate, "container " + containerClass, sentence, "/containers/" + label);
    }
  }

  @Override
  public List<LifeEvent> events(UUID accessionId) {
    return jdbc
        .sql(
            """
            select x.on_date, x.what, u.label, k.code as container_class, x.number, x.saleable
            from (
              select l.unit_id, l.potted_on as on_date, l.potted as number,
                     cast(null as integer) as saleable,
                     case when exists (select 1 from lot_source s
                                       join lot smaller on smaller.unit_id = s.source_id
                                       where s.lot_id = l.unit_id)
                          then 'shifted' else 'potted' end as what
              from lot l
              union all
              select c.lot_id, c.on_date, c.alive, c.saleable, 'counted'
              from lot_count c
              where not exists (select 1 from lot_count later where later.supersedes_id = c.id)
              union all
              select g.lot_id, g.on_date, g.grade_a + g.grade_b + g.grade_c, g.grade_a, 'graded'
              from lot_grade g
              where g.grade_a is not null
                and not exists (select 1 from lot_grade later where later.supersedes_id = g.id)
              union all
              select c.lot_id, c.on_date, 0, null, c.kind
              from lot_care c
              where not exists (select 1 from lot_care later where later.supersedes_id = c.id)
            ) x
            join holding h on h.unit_id = x.unit_id
              and h.from_date <= x.on_date and h.until_date > x.on_date
            join lot l on l.unit_id = x.unit_id
            join unit u on u.id = x.unit_id
            join container_class k on k.id = l.container_class_id
            where h.accession_id = :accession
            """)
        .param("accession", accessionId)
        .query(Told.class)
        .list()
        .stream()
        .map(Told::event)
        .toList();
  }
}
