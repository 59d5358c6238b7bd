package trialwood.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.crop.Crop;
import trialwood.crop.LookDays;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Parentage;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;

@RecordTest
@Import(Identity.class)
class IdentityTest {

  static final LocalDate JUNE = LocalDate.of(2022, 6, 6);
  static final LocalDate JULY = LocalDate.of(2022, 7, 5);
  static final LocalDate AUTUMN = LocalDate.of(2022, 9, 8);

  @Autowired EntityManager records;
  @Autowired Identity identity;
  @Autowired Recorder recorder;
  @Autowired JdbcClient jdbc;

  UUID white;
  UUID pink;
  UUID tray;

  @BeforeEach
  void aTrayOfTheWhiteOne() {
    Crop shrub = new Crop("SHRUB", "Frutex", "shrub", true, 18, 24, LookDays.of("7 14"), 85, null);
    records.persist(shrub);
    white = accession(shrub, "C18-03");
    pink = accession(shrub, "C18-04");
    Unit unit = new Unit(UnitKind.TRAY, "22-C18-03-1", null);
    records.persist(unit);
    tray = Objects.requireNonNull(unit.id());
    say(white, JUNE, null);
  }

  @Test
  void a_unit_belongs_to_its_accession_from_the_day_that_was_said() {
    assertThat(holderOn(JUNE.minusDays(1))).isNull();
    assertThat(holderOn(JUNE)).isEqualTo(white);
    assertThat(holderOn(AUTUMN)).isEqualTo(white);
  }

  @Test
  void a_later_word_overrides_the_earlier_for_the_days_it_covers() {
    say(pink, JULY, null);
    assertThat(holderOn(JULY.minusDays(1))).isEqualTo(white);
    assertThat(holderOn(JULY)).isEqualTo(pink);
  }

  @Test
  void a_word_with_an_end_gives_the_unit_back_on_that_day() {
    say(pink, JULY, AUTUMN);
    assertThat(holderOn(AUTUMN.minusDays(1))).isEqualTo(pink);
    assertThat(holderOn(AUTUMN)).isEqualTo(white);
  }

  @Test
  void taking_a_word_back_is_one_more_word() {
    say(pink, JULY, null);
    say(white, JULY, null);
    assertThat(holderOn(AUTUMN)).isEqualTo(white);
    assertThat(jdbc.sql("select count(*) from tie").query(Integer.class).single()).isEqualTo(3);
  }

  @Test
  void a_word_that_ends_before_it_begins_is_refused() {
    assertThatThrownBy(() -> say(pink, AUTUMN, JULY))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("ends before it begins");
  }

  private void say(UUID accession, LocalDate from, @Nullable LocalDate until) {
    identity.say(
        List.of(new Tie(tray, accession, from, until, "said", null, AUTUMN, recorder.by(null))));
  }

  private @Nullable UUID holderOn(LocalDate day) {
    return jdbc.sql(
            """
            select accession_id from holding
            where unit_id = :unit and from_date <= :day and :day < until_date
            """)
        .param("unit", tray)
        .param("day", day)
        .query(UUID.class)
        .optional()
        .orElse(null);
  }

  private UUID accession(Crop crop, String code) {
    Accession accession =
        new Accession(
            Objects.requireNonNull(crop.id()),
            code,
            AccessionKind.CANDIDATE,
            Parentage.unknown(),
            null);
    records.persist(accession);
    return Objects.requireNonNull(accession.id());
  }
}
