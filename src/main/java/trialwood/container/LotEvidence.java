package trialwood.container;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The newest lot of each accession that somebody counted, in one statement. */
@Component
class LotEvidence {

  private static final String SQL =
      """
      with loss as (
        select x.lot_id, h.accession_id, x.on_date, x.number
        from lot_loss x
        join holding h on h.unit_id = x.lot_id
          and h.from_date <= x.on_date and h.until_date > x.on_date
        where x.on_date <= :asOf
          and not exists (select 1 from lot_loss later where later.supersedes_id = x.id)
      ), outgoing as (
        select x.lot_id, x.on_date, x.number
        from lot_outgoing x
        where x.on_date <= :asOf
          and not exists (select 1 from lot_outgoing later where later.supersedes_id = x.id)
      ), counted as (
        select h.accession_id, l.unit_id as lot_id, l.potted, c.on_date, c.alive,
               row_number() over (
                 partition by h.accession_id
                 order by l.potted_on desc, l.unit_id, c.on_date desc, c.recorded_at desc) as place
        from lot_count c
        join lot l on l.unit_id = c.lot_id
        join holding h on h.unit_id = c.lot_id
          and h.from_date <= c.on_date and h.until_date > c.on_date
        where h.accession_id in (:accessions) and c.on_date <= :asOf
          and not exists (select 1 from lot_count later where later.supersedes_id = c.id)
          and case when exists (select 1 from lot_source s
                       join lot smaller on smaller.unit_id = s.source_id
                       where s.lot_id = l.unit_id) then 1 else 0 end = :shifted
      )
      select c.accession_id, u.label, c.potted, c.on_date, c.alive,
             (select coalesce(sum(x.number), 0) from loss x
              where x.lot_id = c.lot_id and x.accession_id = c.accession_id) as lost,
             (select max(x.on_date) from loss x
              where x.lot_id = c.lot_id and x.accession_id = c.accession_id) as last_loss,
             c.potted - c.alive
               - (select coalesce(sum(x.number), 0) from loss x
                  where x.lot_id = c.lot_id and x.on_date <= c.on_date)
               - (select coalesce(sum(x.number), 0) from outgoing x
                  where x.lot_id = c.lot_id and x.on_date <= c.on_date) as missing
      from counted c
      join unit u on u.id = c.lot_id
      where c.place = 1
      """;

  private final JdbcClient jdbc;

  LotEvidence(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A lot and its newest count.
   *
   * @param lost by the losses on record
   * @param missing at the count without any record; below zero when too many were found
   */
  record Counted(
      UUID accessionId,
      String label,
      int potted,
      LocalDate onDate,
      int alive,
      int lost,
      @Nullable LocalDate lastLoss,
      int missing) {

    /** What is gone without a record is as dead as what has one. */
    int gone() {
      return Math.min(potted, lost + Math.max(0, missing));
    }

    LocalDate newest() {
      return lastLoss != null && lastLoss.isAfter(onDate) ? lastLoss : onDate;
    }
  }

  /**
   * @param shifted lots whose plants came out of smaller lots, or else those from trays or bought
   */
  List<Counted> newest(Set<UUID> accessions, LocalDate asOf, boolean shifted) {
    return jdbc.sql(SQL)
        .param("accessions", accessions)
        .param("asOf", asOf)
        .param("shifted", shifted ? 1 : 0)
        .query(Counted.class)
        .list();
  }
}
