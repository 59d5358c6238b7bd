package trialwood.propagation;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What went between trays, as people read it. */
@Repository
public class PassageList {

  private final JdbcClient jdbc;

  PassageList(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * One passage, as one of its trays sees it.
   *
   * @param out whether the cuttings went out of that tray
   * @param other label of the other tray
   * @param back why it was taken back, if it was
   */
  public record Line(
      UUID id,
      LocalDate onDate,
      int number,
      boolean out,
      String other,
      boolean begins,
      @Nullable String note,
      String by,
      @Nullable String back) {

    /** As words: 7 cuttings went to 22-A18-04-3B. */
    public String words() {
      return "%d %s %s %s"
          .formatted(
              number,
              number == 1 ? "cutting" : "cuttings",
              out ? "went to" : begins ? "began this tray, from" : "came from",
              other);
    }
  }

  /** All passages of a tray in the order of their days. */
  public List<Line> of(UUID trayId) {
    return jdbc.sql(
            """
            select p.id, p.on_date, p.number, p.from_tray_id = :tray as out, u.label as other, p.begins,
                   p.note, coalesce(w.initials, p.account) as "by", b.reason as back
            from tray_passage p
            join unit u on u.id = case when p.from_tray_id = :tray then p.to_tray_id else p.from_tray_id end
            left join person w on w.id = p.person_id
            left join passage_taken_back b on b.passage_id = p.id
            where p.from_tray_id = :tray or p.to_tray_id = :tray
            order by p.on_date, p.recorded_at
            """)
        .param("tray", trayId)
        .query(Line.class)
        .list();
  }
}
