package trialwood.stock;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.record.CodeKey;

/** What the pages show of stock plants, each part one statement. */
@Component
public class StockBook {

  /** With one plant left, one accident ends the clone (common practice, no source). */
  private static final int FEW = 2;

  private static final String PLANTS =
      """
      with standing as (
        select e.stock_id, e.kind, e.on_date, e.place, e.agent, e.result, e.note,
               row_number() over (partition by e.stock_id, e.kind
                                  order by e.on_date desc, e.recorded_at desc) as nth
        from stock_event e
        where not exists (select 1 from stock_event later where later.supersedes_id = e.id)
      )
      select p.unit_id as stock_id, u.label, h.accession_id, a.code, a.talk_name, p.number,
             p.since_date as since, coalesce(m.place, p.place) as place,
             coalesce(b.code, o.label) as origin, d.on_date as died_on, d.note as died_of,
             t.on_date as tested_on, i.positive_on, coalesce(c.cuttings, 0) as cuttings, p.note
      from stock_plant p
      join unit u on u.id = p.unit_id
      join holding h on h.unit_id = p.unit_id and h.until_date = (
        select max(last.until_date) from holding last where last.unit_id = p.unit_id)
      join accession a on a.id = h.accession_id
      left join batch b on b.id = p.origin_batch_id
      left join unit o on o.id = p.origin_unit_id
      left join standing m on m.stock_id = p.unit_id and m.kind = 'MOVED' and m.nth = 1
      left join standing d on d.stock_id = p.unit_id and d.kind = 'DIED' and d.nth = 1
      left join standing t on t.stock_id = p.unit_id and t.kind = 'TESTED' and t.nth = 1
      left join (select stock_id, min(on_date) as positive_on from standing
                 where result = 'POSITIVE' group by stock_id) i on i.stock_id = p.unit_id
      left join (select s.source_unit_id, sum(y.stuck) as cuttings
                 from batch s join tray y on y.batch_id = s.id
                 where s.source_unit_id is not null and y.stuck_on >= :newYear
                 group by s.source_unit_id) c on c.source_unit_id = p.unit_id
      """;

  private final JdbcClient jdbc;

  StockBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * A stock plant as it is now.
   *
   * @param origin the batch, lot or plant it came from
   * @param testedOn day of the last test, whatever it found
   * @param positiveOn day of the first test that found something
   * @param cuttings stuck this year
   */
  public record Standing(
      UUID stockId,
      String label,
      UUID accessionId,
      String code,
      @Nullable String talkName,
      int number,
      LocalDate since,
      String place,
      @Nullable String origin,
      @Nullable LocalDate diedOn,
      @Nullable String diedOf,
      @Nullable LocalDate testedOn,
      @Nullable LocalDate positiveOn,
      long cuttings,
      @Nullable String note) {

    public boolean isAlive() {
      return diedOn == null;
    }

    /** Whether cuttings may be taken from it. */
    public boolean isClean() {
      return isAlive() && positiveOn == null;
    }
  }

  /**
   * Something that happened to a plant.
   *
   * @param reason why it takes the place of an earlier record, where it does
   */
  public record Happened(
      UUID id,
      LocalDate onDate,
      StockEvent.Kind kind,
      @Nullable String place,
      @Nullable String agent,
      StockEvent.@Nullable Result result,
      @Nullable String note,
      @Nullable UUID personId,
      @Nullable String initials,
      @Nullable String reason,
      boolean replaced) {

    /** In words, without the day. */
    public String words() {
      String what =
          switch (kind) {
            case MOVED -> "moved to " + place;
            case DIED -> "died";
            case TESTED ->
                "tested for %s: %s"
                    .formatted(
                        agent, result == StockEvent.Result.POSITIVE ? "positive" : "negative");
          };
      return note == null ? what : what + "; " + note;
    }
  }

  /** Cuttings stuck from a plant in a year. */
  public record Taken(int inYear, long cuttings) {}

  /** Every stock plant, by accession and number, the dead ones last. */
  public List<Standing> all(LocalDate today) {
    return jdbc.sql(
            PLANTS + " order by case when d.on_date is null then 0 else 1 end, a.code, p.number")
        .param("newYear", today.withDayOfYear(1))
        .query(Standing.class)
        .list();
  }

  public Optional<Standing> labelled(String label, LocalDate today) {
    return jdbc.sql(PLANTS + " where u.label_key = :key")
        .param("newYear", today.withDayOfYear(1))
        .param("key", CodeKey.of(label))
        .query(Standing.class)
        .optional();
  }

  /** The stock plants of one accession, by number. */
  public List<Standing> of(UUID accession, LocalDate today) {
    return jdbc.sql(PLANTS + " where h.accession_id = :accession order by p.number, p.since_date")
        .param("newYear", today.withDayOfYear(1))
        .param("accession", accession)
        .query(Standing.class)
        .list();
  }

  public List<Happened> happened(UUID stock) {
    return jdbc.sql(
            """
            select e.id, e.on_date, e.kind, e.place, e.agent, e.result, e.note, e.person_id,
                   w.initials, e.supersede_reason as reason,
                   exists (select 1 from stock_event y where y.supersedes_id = e.id) as replaced
            from stock_event e left join person w on w.id = e.person_id
            where e.stock_id = :stock order by e.on_date, e.recorded_at
            """)
        .param("stock", stock)
        .query(Happened.class)
        .list();
  }

  public List<Taken> taken(UUID stock) {
    return jdbc.sql(
            """
            select cast(extract(year from t.stuck_on) as integer) as in_year,
                   sum(t.stuck) as cuttings
            from batch b join tray t on t.batch_id = b.id
            where b.source_unit_id = :stock
            group by extract(year from t.stuck_on) order by 1
            """)
        .param("stock", stock)
        .query(Taken.class)
        .list();
  }

  /**
   * What could cost the nursery the clone.
   *
   * @param plants of one accession
   * @return a sentence for each danger; none where no stock plant was ever kept
   */
  public static List<String> warnings(List<Standing> plants) {
    List<String> warnings = new ArrayList<>();
    List<Standing> clean = plants.stream().filter(Standing::isClean).toList();
    if (!plants.isEmpty() && clean.size() < FEW) {
      warnings.add(
          clean.isEmpty()
              ? "No stock plant is left that may be cut."
              : "Only one stock plant is left that may be cut: keep at least two.");
    }
    if (clean.size() >= FEW
        && clean.stream().map(it -> CodeKey.of(it.place())).collect(Collectors.toSet()).size()
            == 1) {
      warnings.add(
          "One place holds all %d stock plants: %s.".formatted(clean.size(), clean.get(0).place()));
    }
    return warnings;
  }
}
