package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The newest winter of each accession that was counted before and after, in one statement. */
@Component
class WinterEvidence {

  private static final String SQL =
      """
      with counted as (
        select c.lot_id, c.on_date, c.alive, c.recorded_at,
               extract(month from c.on_date) as in_month, extract(year from c.on_date) as in_year
        from lot_count c
        where c.on_date <= :asOf
          and not exists (select 1 from lot_count later where later.supersedes_id = c.id)
      ), autumn as (
        select lot_id, on_date, alive, in_year,
               row_number() over (partition by lot_id, in_year
                                  order by on_date desc, recorded_at desc) as place
        from counted where in_month >= 9
      ), spring as (
        select lot_id, on_date, alive, in_year - 1 as in_year,
               row_number() over (partition by lot_id, in_year
                                  order by on_date, recorded_at desc) as place
        from counted where in_month between 2 and 6
      ), winter as (
        select h.accession_id, a.lot_id, a.on_date as autumn_on, a.alive as autumn,
               s.on_date as spring_on, s.alive as spring,
               row_number() over (partition by h.accession_id
                                  order by s.on_date desc, l.potted_on desc, l.unit_id) as place
        from autumn a
        join spring s on s.lot_id = a.lot_id and s.in_year = a.in_year
        join lot l on l.unit_id = a.lot_id
        join holding h on h.unit_id = a.lot_id
          and h.from_date <= s.on_date and h.until_date > s.on_date
        where a.place = 1 and s.place = 1 and h.accession_id in (:accessions)
      )
      select w.accession_id, u.label, w.autumn_on, w.autumn, w.spring_on, w.spring,
             (select coalesce(sum(o.number), 0) from lot_outgoing o
              where o.lot_id = w.lot_id and o.on_date > w.autumn_on and o.on_date <= w.spring_on
                and not exists (select 1 from lot_outgoing later
                                where later.supersedes_id = o.id)) as taken_out
      from winter w
      join unit u on u.id = w.lot_id
      where w.place = 1
      """;

  private final JdbcClient jdbc;

  WinterEvidence(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A lot before and after a winter.
   *
   * @param autumn alive at the last count before it
   * @param spring alive at the first count after it
   * @param takenOut alive between the two
   */
  record Wintered(
      UUID accessionId,
      String label,
      LocalDate autumnOn,
      int autumn,
      LocalDate springOn,
      int spring,
      int takenOut) {

    /** Never more than there were: a count that finds more is asked about elsewhere. */
    int survived() {
      return Math.min(autumn, spring + takenOut);
    }
  }

  List<Wintered> newest(Set<UUID> accessions, LocalDate asOf) {
    return jdbc.sql(SQL)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .query(Wintered.class)
        .list();
  }
}
