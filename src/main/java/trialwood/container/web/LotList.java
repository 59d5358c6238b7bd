package trialwood.container.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.core.simple.JdbcClient.StatementSpec;
import org.springframework.stereotype.Component;
import trialwood.web.ListQuery;

/** The lots as a list: two statements, however many there are. */
@Component
class LotList {

  /** The columns a person can sort by. */
  private static final Map<String, String> COLUMNS =
      Map.of(
          "lot", "u.label",
          "accession", "a.code_key",
          "class", "k.highest_litres",
          "potted", "l.potted_on",
          "alive", "alive",
          "counted", "c.on_date");

  private static final String ROWS =
      """
      select u.label, a.code as accession, k.code as container_class, l.litres, l.potted_on,
             l.potted,
             l.potted - (select coalesce(sum(x.number), 0) from lot_loss x
                         where x.lot_id = l.unit_id
                           and not exists (select 1 from lot_loss later
                                           where later.supersedes_id = x.id))
                      - (select coalesce(sum(x.number), 0) from lot_outgoing x
                         where x.lot_id = l.unit_id
                           and not exists (select 1 from lot_outgoing later
                                           where later.supersedes_id = x.id)) as alive,
             c.on_date as counted, c.alive as found, c.saleable, l.yard
      """;

  private static final String FROM =
      """
      from lot l
      join unit u on u.id = l.unit_id
      join container_class k on k.id = l.container_class_id
      join holding h on h.unit_id = l.unit_id and h.until_date = (
        select max(last.until_date) from holding last where last.unit_id = l.unit_id)
      join accession a on a.id = h.accession_id
      left join (select x.lot_id, x.on_date, x.alive, x.saleable,
                        row_number() over (partition by x.lot_id
                                           order by x.on_date desc, x.recorded_at desc) as place
                 from lot_count x
                 where not exists (select 1 from lot_count later where later.supersedes_id = x.id)
                ) c on c.lot_id = l.unit_id and c.place = 1
      where (:text = '' or lower(u.label) like :like or lower(a.code) like :like
             or lower(a.talk_name) like :like or lower(l.yard) like :like)
        and (:class = '' or k.code = :class)
        and (:season = '' or cast(extract(year from l.potted_on) as varchar(4)) = :season)
      """;

  private final JdbcClient jdbc;

  LotList(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * @param alive by the ledger
   * @param found alive at the last count
   */
  record Row(
      String label,
      String accession,
      String containerClass,
      @Nullable BigDecimal litres,
      LocalDate pottedOn,
      int potted,
      int alive,
      @Nullable LocalDate counted,
      @Nullable Integer found,
      @Nullable Integer saleable,
      @Nullable String yard) {}

  List<Row> page(ListQuery query) {
    String order = query.orderBy(COLUMNS, "l.potted_on desc, u.label");
    return asked(ROWS + FROM + "order by " + order + " limit :size offset :offset", query)
        .param("size", query.size())
        .param("offset", query.offset())
        .query(Row.class)
        .list();
  }

  /** All rows of the query, whatever its page. */
  List<Row> all(ListQuery query) {
    String order = query.orderBy(COLUMNS, "l.potted_on desc, u.label");
    return asked(ROWS + FROM + "order by " + order, query).query(Row.class).list();
  }

  long total(ListQuery query) {
    return asked("select count(*) " + FROM, query).query(Long.class).single();
  }

  /** The years in which something was potted, latest first. */
  List<Integer> seasons() {
    return jdbc.sql(
            """
            select distinct cast(extract(year from potted_on) as integer) as season
            from lot order by season desc
            """)
        .query(Integer.class)
        .list();
  }

  private StatementSpec asked(String sql, ListQuery query) {
    return jdbc.sql(sql)
        .param("text", query.text())
        .param("like", "%" + query.text().toLowerCase(Locale.ROOT) + "%")
        .param("class", query.filters().getOrDefault("class", ""))
        .param("season", query.filters().getOrDefault("season", ""));
  }
}
