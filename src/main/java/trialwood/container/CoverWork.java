package trialwood.container;

import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.evidence.WorkSource;
import trialwood.people.Role;
import trialwood.web.Measures;

/**
 * Asks for lots with living plants to be covered in November and uncovered in April. Common
 * practice, no source.
 */
@Component
class CoverWork implements WorkSource {

  /** A month later the winter is there, or over. */
  private static final WorkKind COVERS = new WorkKind("covers", "Winter covers", Role.BENCH, 31);

  private final JdbcClient jdbc;
  private final Measures measures;

  CoverWork(JdbcClient jdbc, Measures measures) {
    this.jdbc = jdbc;
    this.measures = measures;
  }

  /**
   * @param covered last day of this winter on which it was covered
   * @param uncovered last day on which it was uncovered
   */
  private record Covered(
      String label,
      String code,
      @Nullable String yard,
      @Nullable LocalDate covered,
      @Nullable LocalDate uncovered) {

    boolean isUnderCover() {
      return covered != null && (uncovered == null || uncovered.isBefore(covered));
    }
  }

  /** Lots whose cover is not as the season wants it. */
  @Override
  public List<DueWork> due(LocalDate today) {
    boolean cold = today.getMonth() == Month.NOVEMBER || today.getMonth() == Month.DECEMBER;
    boolean warm = today.getMonth() == Month.APRIL || today.getMonth() == Month.MAY;
    if (!cold && !warm) {
      return List.of();
    }
    LocalDate autumn = LocalDate.of(today.getYear() - (warm ? 1 : 0), Month.SEPTEMBER, 1);
    LocalDate until = LocalDate.of(today.getYear(), warm ? Month.APRIL : Month.NOVEMBER, 30);
    return living(today, autumn).stream()
        .filter(lot -> cold ? lot.covered() == null : lot.isUnderCover())
        .map(lot -> work(lot, cold ? "Cover" : "Uncover", until))
        .toList();
  }

  private DueWork work(Covered lot, String what, LocalDate until) {
    return COVERS
        .at(
            Objects.requireNonNullElse(lot.yard(), "containers"),
            until,
            "%s %s in lot %s".formatted(what, lot.code(), lot.label()),
            lot.covered() == null
                ? "not covered this winter"
                : "covered since %s".formatted(measures.date(lot.covered())),
            "/containers/%s/winter".formatted(lot.label()))
        .from(until.withDayOfMonth(1))
        .readAt("/containers/" + lot.label());
  }

  private List<Covered> living(LocalDate today, LocalDate autumn) {
    return jdbc.sql(
            """
            select u.label, a.code, l.yard,
                   (select max(c.on_date) from lot_care c
                    where c.lot_id = l.unit_id and c.kind = 'COVERED' and c.on_date >= :autumn
                   ) as covered,
                   (select max(c.on_date) from lot_care c
                    where c.lot_id = l.unit_id and c.kind = 'UNCOVERED' and c.on_date >= :autumn
                   ) as uncovered
            from lot l
            join unit u on u.id = l.unit_id
            join holding h on h.unit_id = l.unit_id
              and h.from_date <= :today and h.until_date > :today
            join accession a on a.id = h.accession_id
            left join candidate cand on cand.accession_id = a.id
            where l.potted_on <= :today
              and (cand.standing is null or cand.standing <> 'DISCARDED')
              and l.potted > (select coalesce(sum(x.number), 0) from lot_loss x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_loss later
                                                where later.supersedes_id = x.id))
                           + (select coalesce(sum(x.number), 0) from lot_outgoing x
                              where x.lot_id = l.unit_id
                                and not exists (select 1 from lot_outgoing later
                                                where later.supersedes_id = x.id))
            order by l.yard, u.label
            """)
        .param("today", today)
        .param("autumn", autumn)
        .query(Covered.class)
        .list();
  }
}
