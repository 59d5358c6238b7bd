package trialwood.ground;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import trialwood.lineage.CheckRole;

/** What serves as a check, and for what. */
@Repository
class CropCheckList {

  private final JdbcClient jdbc;

  CropCheckList(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * One accession in one role.
   *
   * @param crop its common name
   */
  record Check(
      String crop,
      CheckRole role,
      String code,
      @Nullable String talkName,
      @Nullable String description,
      @Nullable String origin) {

    /** What a check in that role is there for. */
    public String purpose() {
      return switch (role) {
        case BENCH -> "stuck in every run: when it fails, the bench failed";
        case MARKET -> "what a customer would buy instead";
        case SUSCEPTIBLE -> "proves that there was disease pressure";
        case RESISTANT -> "stays clean under pressure";
        case HARDY -> "stands the winter";
      };
    }
  }

  List<Check> all() {
    return of(null);
  }

  /** The checks of one crop, or of all. */
  List<Check> of(@Nullable UUID crop) {
    return jdbc.sql(
            """
            select c.common_name as crop, k.role, a.code, a.talk_name, a.description, a.origin
            from crop_check k
            join crop c on c.id = k.crop_id
            join accession a on a.id = k.accession_id
            where cast(:crop as uuid) is null or k.crop_id = :crop
            order by c.code, k.role, a.code
            """)
        .param("crop", crop)
        .query(Check.class)
        .list();
  }
}
