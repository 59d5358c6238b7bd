package trialwood.container.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.container.RootBall;
import trialwood.record.CodeKey;

/** What a lot's pages show, each part one statement. */
@Component
class LotBook {

  private static final String HAPPENED =
      """
      select x.id, x.on_date, x.what, x.number, x.saleable, x.grade_b, x.grade_c, x.root_ball,
             x.cut_to_cm, x.lowest_celsius, x.dieback_percent, x.words, x.checked, x.person_id,
             p.initials, x.reason, x.replaced
      from (
        select c.id, c.on_date, 'COUNTED' as what, c.alive as number, c.saleable,
               cast(null as integer) as grade_b, cast(null as integer) as grade_c,
               cast(null as integer) as root_ball, cast(null as numeric(5, 1)) as cut_to_cm,
               cast(null as numeric(4, 1)) as lowest_celsius,
               cast(null as integer) as dieback_percent, c.note as words,
               cast(null as varchar(300)) as checked, c.person_id, c.recorded_at,
               c.supersede_reason as reason,
               exists (select 1 from lot_count y where y.supersedes_id = c.id) as replaced
        from lot_count c where c.lot_id = :lot
        union all
        select c.id, c.on_date, 'GRADED', c.grade_a + c.grade_b + c.grade_c, c.grade_a, c.grade_b,
               c.grade_c, c.root_ball, null, null, null, null, c.checked, c.person_id,
               c.recorded_at, c.supersede_reason,
               exists (select 1 from lot_grade y where y.supersedes_id = c.id)
        from lot_grade c where c.lot_id = :lot
        union all
        select c.id, c.on_date, c.kind, null, null, null, null, null, c.cut_to_cm,
               c.lowest_celsius, c.dieback_percent, c.house, c.checked, c.person_id,
               c.recorded_at, c.supersede_reason,
               exists (select 1 from lot_care y where y.supersedes_id = c.id)
        from lot_care c where c.lot_id = :lot
        union all
        select c.id, c.on_date, 'LOST', c.number, null, null, null, null, null, null, null,
               c.reason, null, c.person_id, c.recorded_at, c.supersede_reason,
               exists (select 1 from lot_loss y where y.supersedes_id = c.id)
        from lot_loss c where c.lot_id = :lot
        union all
        select c.id, c.on_date, c.way, c.number, null, null, null, null, null, null, null,
               coalesce(c.to_whom, c.purpose), null, c.person_id, c.recorded_at,
               c.supersede_reason,
               exists (select 1 from lot_outgoing y where y.supersedes_id = c.id)
        from lot_outgoing c where c.lot_id = :lot
      ) x
      left join person p on p.id = x.person_id
      order by x.on_date, x.recorded_at
      """;

  private final JdbcClient jdbc;

  LotBook(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** What stands on top of a lot's page. */
  record Head(
      UUID lotId,
      String label,
      UUID accessionId,
      String code,
      @Nullable String talkName,
      UUID cropId,
      UUID classId,
      String containerClass,
      @Nullable BigDecimal litres,
      LocalDate pottedOn,
      int potted,
      @Nullable String yard,
      @Nullable String note,
      @Nullable String medium,
      @Nullable BigDecimal feedGrams,
      @Nullable String checked,
      @Nullable String initials) {}

  /** Where plants came from. */
  record Source(String label, String kind, int number) {
    public boolean isLot() {
      return kind.equals("LOT");
    }
  }

  /**
   * A count, a grading, a loss, plants that left, or something done to the lot.
   *
   * @param number of plants, where it is about a number of them
   * @param saleable of those
   * @param reason why it takes the place of an earlier record, where it does
   */
  record Happened(
      UUID id,
      LocalDate onDate,
      String what,
      @Nullable Integer number,
      @Nullable Integer saleable,
      @Nullable Integer gradeB,
      @Nullable Integer gradeC,
      @Nullable Integer rootBall,
      @Nullable BigDecimal cutToCm,
      @Nullable BigDecimal lowestCelsius,
      @Nullable Integer diebackPercent,
      @Nullable String words,
      @Nullable String checked,
      @Nullable UUID personId,
      @Nullable String initials,
      @Nullable String reason,
      boolean replaced) {

    /** The part of the address under which it is put right; nothing for plants that left. */
    public @Nullable String correctedUnder() {
      return switch (what) {
        case "COUNTED" -> "counts";
        case "LOST" -> "losses";
        case "GRADED" -> "grade";
        case "PINCHED", "PRUNED" -> "cut";
        case "COVERED", "UNCOVERED" -> "winter";
        default -> null;
      };
    }

    public boolean isPinch() {
      return what.equals("PINCHED");
    }

    public String word() {
      return what.toLowerCase(Locale.ROOT);
    }

    /** What was measured or scored with it, in words. */
    public List<String> details() {
      return Stream.of(
              gradeB == null ? null : "%d A, %d B, %d C".formatted(saleable, gradeB, gradeC),
              rootBall == null
                  ? null
                  : "root ball %d: %s".formatted(rootBall, RootBall.words(rootBall)),
              cutToCm == null ? null : "cut to %s cm".formatted(plain(cutToCm)),
              lowestCelsius == null ? null : "pots down to %s °C".formatted(plain(lowestCelsius)),
              diebackPercent == null ? null : "dieback %d %%".formatted(diebackPercent),
              words,
              checked == null ? null : "checked: " + checked)
          .filter(Objects::nonNull)
          .toList();
    }

    private static String plain(BigDecimal number) {
      return number.stripTrailingZeros().toPlainString().replace('-', '−');
    }
  }

  /** A check's lot of the same class and season, at its last count. */
  record CheckLot(
      UUID lotId,
      String label,
      String code,
      String role,
      int potted,
      @Nullable LocalDate counted,
      @Nullable Integer alive,
      @Nullable Integer saleable) {

    public String roleWord() {
      return role.toLowerCase(Locale.ROOT) + " check";
    }
  }

  Optional<Head> head(String label) {
    return jdbc.sql(
            """
            select l.unit_id as lot_id, u.label, a.id as accession_id, a.code, a.talk_name,
                   a.crop_id, k.id as class_id, k.code as container_class, l.litres, l.potted_on,
                   l.potted, l.yard, l.note, l.medium, l.feed_grams, l.checked, p.initials
            from lot l
            join unit u on u.id = l.unit_id
            join container_class k on k.id = l.container_class_id
            join holding h on h.unit_id = l.unit_id and h.until_date = (
              select max(last.until_date) from holding last where last.unit_id = l.unit_id)
            join accession a on a.id = h.accession_id
            left join person p on p.id = l.person_id
            where u.label_key = :key
            """)
        .param("key", CodeKey.of(label))
        .query(Head.class)
        .optional();
  }

  List<Source> sources(UUID lot) {
    return jdbc.sql(
            """
            select u.label, u.kind, s.number
            from lot_source s join unit u on u.id = s.source_id
            where s.lot_id = :lot order by u.label
            """)
        .param("lot", lot)
        .query(Source.class)
        .list();
  }

  List<Happened> happened(UUID lot) {
    return jdbc.sql(HAPPENED).param("lot", lot).query(Happened.class).list();
  }

  List<CheckLot> checksBeside(Head lot) {
    return jdbc.sql(
            """
            select l.unit_id as lot_id, u.label, a.code, k.role, l.potted, c.on_date as counted,
                   c.alive, c.saleable
            from crop_check k
            join accession a on a.id = k.accession_id
            join holding h on h.accession_id = a.id
            join lot l on l.unit_id = h.unit_id
              and h.from_date <= l.potted_on and h.until_date > l.potted_on
            join unit u on u.id = l.unit_id
            left join (select x.lot_id, x.on_date, x.alive, x.saleable,
                              row_number() over (partition by x.lot_id
                                order by x.on_date desc, x.recorded_at desc) as place
                       from lot_count x
                       where not exists (select 1 from lot_count later
                                         where later.supersedes_id = x.id)
                      ) c on c.lot_id = l.unit_id and c.place = 1
            where k.crop_id = :crop and l.container_class_id = :class and l.unit_id <> :lot
              and l.potted_on >= :newYear and l.potted_on < :nextYear
            order by u.label
            """)
        .param("crop", lot.cropId())
        .param("class", lot.classId())
        .param("lot", lot.lotId())
        .param("newYear", lot.pottedOn().withDayOfYear(1))
        .param("nextYear", lot.pottedOn().withDayOfYear(1).plusYears(1))
        .query(CheckLot.class)
        .list();
  }
}
