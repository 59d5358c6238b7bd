package trialwood.correction;

import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.web.Measures;

/** What hangs on units, and what about it first looked wrong. */
@Repository
class Records {

  private static final int MOST_SEEN = 20;

  private final JdbcClient jdbc;

  Records(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** So many records of one kind. */
  record Hanging(String kind, long number) {

    /** As words: 12 values. */
    public String words() {
      String many =
          switch (kind) {
            case "taken out" -> "taken out";
            case "loss" -> "losses";
            case "going out" -> "goings out";
            case "move of cuttings" -> "moves of cuttings";
            case "pinch, pruning or cover" -> "times pinched, pruned or covered";
            default -> kind + "s";
          };
      return "%d %s".formatted(number, number == 1 ? kind : many);
    }
  }

  /** The standing records of these units in these days, by kind. */
  List<Hanging> on(Collection<UUID> units, LocalDate from, LocalDate until) {
    if (units.isEmpty()) {
      return List.of();
    }
    return jdbc.sql(
            """
            select kind, count(distinct record_id) as number from unit_record
            where unit_id in (:units) and on_date >= :from and on_date < :until
            group by kind order by kind
            """)
        .param("units", units)
        .param("from", from)
        .param("until", until)
        .query(Hanging.class)
        .list();
  }

  /** Something that was seen on a unit and put down in words. */
  record Seen(
      UUID id,
      UUID unitId,
      String label,
      LocalDate onDate,
      String trait,
      @Nullable String value,
      @Nullable String note) {

    /** As a person reads it, in at most 300 letters. */
    public String words() {
      String words =
          "%s: %s%s"
              .formatted(
                  trait,
                  value == null ? "" : value,
                  note == null ? "" : (value == null ? "" : "; ") + note);
      return words.length() <= 300 ? words : words.substring(0, 299) + "…";
    }

    public String day() {
      return Measures.day(onDate);
    }
  }

  /** What was written in words about these units in these days, the oldest first. */
  List<Seen> seenOn(Collection<UUID> units, LocalDate from, LocalDate until) {
    if (units.isEmpty()) {
      return List.of();
    }
    return jdbc.sql(
            """
            select o.id, o.unit_id, u.label, o.on_date, t.name as trait, o.text_value as "value", o.note
            from observation o
            join unit u on u.id = o.unit_id
            join trait t on t.id = o.trait_id
            where o.unit_id in (:units) and o.on_date >= :from and o.on_date < :until
              and (o.text_value is not null or o.note is not null)
              and not exists (select 1 from observation s where s.supersedes_id = o.id)
            order by o.on_date, u.label
            limit :most
            """)
        .param("units", units)
        .param("from", from)
        .param("until", until)
        .param("most", MOST_SEEN)
        .query(Seen.class)
        .list();
  }
}
