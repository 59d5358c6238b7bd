package trialwood.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The units that hold an accession today, by kind, and what is asked about them. */
@Repository
class LivingUnits {

  private final JdbcClient jdbc;

  LivingUnits(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  record Kind(String kind, int number) {

    /** As words: 3 trays. */
    public String words() {
      String word = kind.equals("STOCK") ? "stock plant" : kind.toLowerCase(Locale.ROOT);
      return number == 1 ? "1 " + word : "%d %ss".formatted(number, word);
    }
  }

  record Asked(UUID id, String label, LocalDate onDate, String question) {}

  List<Kind> of(UUID accession, LocalDate today) {
    return jdbc.sql(
            """
            select u.kind, count(*) as number
            from holding h join unit u on u.id = h.unit_id
            where h.accession_id = :accession and h.from_date <= :today and :today < h.until_date
            group by u.kind order by u.kind
            """)
        .param("accession", accession)
        .param("today", today)
        .query(Kind.class)
        .list();
  }

  /** Unanswered questions about its units. */
  List<Asked> doubts(UUID accession) {
    return jdbc.sql(
            """
            select d.id, u.label, d.on_date, d.question
            from doubt d
            join unit u on u.id = d.unit_id
            join holding h on h.unit_id = d.unit_id and h.from_date <= d.on_date and d.on_date < h.until_date
            where h.accession_id = :accession and d.answer is null
            order by d.on_date
            """)
        .param("accession", accession)
        .query(Asked.class)
        .list();
  }

  /** Every unanswered question. */
  List<Asked> doubts() {
    return jdbc.sql(
            """
            select d.id, u.label, d.on_date, d.question
            from doubt d join unit u on u.id = d.unit_id
            where d.answer is null order by d.on_date desc
            """)
        .query(Asked.class)
        .list();
  }
}
