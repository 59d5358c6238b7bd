package trialwood.correction;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Which units came out of which: trays and lots out of trays, lots out of lots, plants that stood
 * in lots.
 */
@Repository
class Descent {

  private final JdbcClient jdbc;

  Descent(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** A unit that came out of another. */
  record Child(UUID parentId, UUID unitId, String label, String kind) {}

  /**
   * One step down, of what was there in these days.
   *
   * @param until the first day after them
   */
  List<Child> of(Collection<UUID> units, LocalDate from, LocalDate until) {
    if (units.isEmpty()) {
      return List.of();
    }
    return jdbc.sql(
            """
            select came.parent_id, u.id as unit_id, u.label, u.kind
            from (
              select s.source_id as parent_id, s.lot_id as child_id
              from lot_source s join lot l on l.unit_id = s.lot_id
              where s.source_id in (:units) and l.potted_on >= :from and l.potted_on < :until
              union
              select x.from_tray_id, x.to_tray_id from tray_passage x
              where x.from_tray_id in (:units) and x.on_date >= :from and x.on_date < :until
                and not exists (select 1 from passage_taken_back b where b.passage_id = x.id)
              union
              select p.lot_id, p.plant_id from plant_place p
              where p.lot_id in (:units) and p.from_date < :until
                and not exists (select 1 from plant_place later
                                where later.plant_id = p.plant_id
                                  and later.from_date > p.from_date and later.from_date <= :from)
            ) came
            join unit u on u.id = came.child_id
            order by u.label
            """)
        .param("units", units)
        .param("from", from)
        .param("until", until)
        .query(Child.class)
        .list();
  }
}
