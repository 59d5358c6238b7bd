package trialwood.ground;

import java.math.BigDecimal;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.crop.Better;
import trialwood.crop.TraitKind;
import trialwood.web.ListQuery;

/** The traits of all crops, filtered, sorted and paged by the database. */
@Repository
class TraitList {

  private static final Map<String, String> COLUMNS =
      Map.of(
          "code", "t.code",
          "name", "lower(t.name)",
          "kind", "t.kind",
          "window", "t.window_from",
          "crop", "c.code");

  private static final String FROM =
      """
      from trait t
      join crop c on c.id = t.crop_id
      where (cast(:crop as varchar) is null or c.code = :crop)
        and (cast(:kind as varchar) is null or t.kind = :kind)
        and (cast(:text as varchar) is null or lower(t.code) like :text
             or lower(t.name) like :text or lower(t.part) like :text)
      """;

  private final JdbcClient jdbc;

  TraitList(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /** One trait; the days of its window as MM-DD. */
  record Line(
      String crop,
      String code,
      String name,
      TraitKind kind,
      @Nullable String unit,
      @Nullable BigDecimal lowest,
      @Nullable BigDecimal highest,
      Better better,
      @Nullable String windowFrom,
      @Nullable String windowUntil,
      @Nullable String part) {

    /** 0–100 %; empty where the trait has no range. */
    public String range() {
      if (lowest == null && highest == null) {
        return unit == null ? "" : unit;
      }
      String range =
          lowest == null || highest == null
              ? (lowest == null ? "up to " + Boxes.number(highest) : "from " + Boxes.number(lowest))
              : Boxes.number(lowest) + "–" + Boxes.number(highest);
      return unit == null ? range : range + "\u00a0" + unit;
    }

    public String window() {
      return windowFrom == null || windowUntil == null
          ? ""
          : (day(windowFrom) + " – " + day(windowUntil)).replace(' ', '\u00a0');
    }

    private static String day(String stored) {
      return Boxes.day(MonthDay.parse("--" + stored));
    }

    public String betterWord() {
      return Boxes.word(better);
    }
  }

  List<Line> page(ListQuery query) {
    return asked(
            """
            select c.code as crop, t.code, t.name, t.kind, t.unit, t.lowest, t.highest, t.better,
                   t.window_from, t.window_until, t.part
            """
                + FROM
                + " order by "
                + query.orderBy(COLUMNS, "c.code, t.code")
                + " limit :size offset :offset",
            query)
        .param("size", query.size())
        .param("offset", query.offset())
        .query(Line.class)
        .list();
  }

  long count(ListQuery query) {
    return asked("select count(*) " + FROM, query).query(Long.class).single();
  }

  private JdbcClient.StatementSpec asked(String sql, ListQuery query) {
    String text = query.text().strip().toLowerCase(Locale.ROOT);
    return jdbc.sql(sql)
        .param("crop", query.filter("crop"))
        .param("kind", query.filter("kind"))
        .param("text", text.isEmpty() ? null : "%" + text + "%");
  }
}
