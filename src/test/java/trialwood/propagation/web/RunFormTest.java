package trialwood.propagation.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Parentage;

class RunFormTest {

  private static final LocalDate JUNE = LocalDate.of(2022, 6, 6);

  private static RunForm form(String ppm, Boolean strong) {
    return new RunForm(
        UUID.randomUUID(),
        "R22",
        "6 Jun 2022",
        "9 Jun 2022",
        "CK-B",
        "",
        "",
        "",
        "",
        "",
        "",
        "",
        "K-IBA",
        "quick dip",
        ppm,
        strong,
        "3",
        "",
        "");
  }

  private static Optional<Accession> check() {
    return Optional.of(
        new Accession(
            UUID.randomUUID(), "CK-B", AccessionKind.CULTIVAR, Parentage.unknown(), null) {
          @Override
          public UUID id() {
            return new UUID(1, 1);
          }
        });
  }

  @Test
  void thirty_thousand_ppm_is_asked_about_as_three_percent() {
    assertThatThrownBy(() -> form("30000", null).read(JUNE, check()))
        .hasMessageContaining("30,000 ppm is 3 %, above the usual 10,000");
  }

  @Test
  void a_strength_that_somebody_checked_is_kept_as_it_was_typed() {
    assertThat(form("30000", true).read(JUNE, check()).treatment().ppm()).isEqualTo(30_000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0.3", "0,3"})
  void a_percentage_in_the_box_for_ppm_is_asked_about(String typed) {
    assertThatThrownBy(() -> form(typed, null).read(JUNE, check()))
        .hasMessageContaining("is that ppm or %? 0.3 % is 3,000 ppm");
  }

  @Test
  void a_usual_strength_is_not_asked_about() {
    assertThat(form("2000", null).read(JUNE, check()).treatment().ppm()).isEqualTo(2000);
  }
}
