package trialwood.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.web.ListQuery;

/** All candidates, filtered, sorted and paged by the database. */
@Repository
class CandidateList {

  private static final Map<String, String> COLUMNS =
      Map.of(
          "code", "a.code",
          "parent", "parent.code",
          "tagged", "f.tagged_on",
          "stage", stageOrder(),
          "standing", "c.standing",
          "hold", "c.hold_until");

  private static final String FROM =
      """
      from candidate c
      join accession a on a.id = c.accession_id
      left join accession parent on parent.id = a.seed_parent_id
      left join field_tag f on f.accession_id = c.accession_id
      where (cast(:stage as varchar) is null or c.stage = :stage)
        and (cast(:standing as varchar) is null or c.standing = :standing)
        and (cast(:text as varchar) is null or lower(a.code) like :text or lower(a.talk_name) like :text
             or lower(parent.code) like :text or lower(a.description) like :text)
      """;

  private final JdbcClient jdbc;

  CandidateList(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  record Line(
      String code,
      @Nullable String talkName,
      @Nullable String description,
      @Nullable String parent,
      @Nullable LocalDate taggedOn,
      Stage stage,
      Standing standing,
      @Nullable LocalDate holdUntil) {}

  List<Line> page(ListQuery query) {
    return asked(
            """
            select a.code, a.talk_name, a.description, parent.code as parent, f.tagged_on, c.stage,
                   c.standing, c.hold_until
            """
                + FROM
                + " order by "
                + query.orderBy(COLUMNS, "a.code")
                + ", a.code limit :size offset :offset",
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
    String text = query.text();
    return jdbc.sql(sql)
        .param("stage", query.filter("stage"))
        .param("standing", query.filter("standing"))
        .param("text", text.isBlank() ? null : "%" + text.strip().toLowerCase(Locale.ROOT) + "%");
  }

  /** Stages sort in their order, not by their letters. */
  private static String stageOrder() {
    StringBuilder order = new StringBuilder("case c.stage");
    for (Stage stage : Stage.values()) {
      order.append(" when '").append(stage).append("' then ").append(stage.ordinal());
    }
    return order.append(" end").toString();
  }
}
