package trialwood.propagation.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Parentage;
import trialwood.propagation.NewRun;
import trialwood.record.Problem;
import trialwood.record.Refused;

/** Limits of the bench: common practice, no source. */
class RunFormTest {

  private static final LocalDate JUNE = LocalDate.of(2022, 6, 9);

  private static NewRun read(Map<String, String> typed) {
    return form(typed).read(JUNE, check());
  }

  private static RunForm form(Map<String, String> typed) {
    return new RunForm(
        UUID.randomUUID(),
        "R22",
        "6 Jun 2022",
        "9 Jun 2022",
        "CK-B",
        null,
        null,
        typed.get("cutting"),
        typed.get("lengthMm"),
        null,
        "K-IBA",
        null,
        typed.get("ppm"),
        typed.get("dipS"),
        typed.get("solutionMadeOn"),
        null,
        typed.get("bottomHeatC"),
        typed.get("airC"),
        typed.get("mistOnS"),
        typed.get("mistEveryMin"),
        null,
        typed.get("shadePercent"),
        typed.get("humidityPercent"),
        null,
        null,
        null);
  }

  private static Optional<Accession> check() {
    return Optional.of(
        new Accession(
            UUID.randomUUID(), "CK-B", AccessionKind.CULTIVAR, Parentage.unknown(), null) {
          @Override
          public @Nullable UUID id() {
            return new UUID(1, 1);
          }
        });
  }

  private static Map<String, String> typed(String boxes) {
    Map<String, String> typed = new HashMap<>();
    for (String box : boxes.split("; ")) {
      String[] said = box.split("=");
      typed.put(said[0], said[1]);
    }
    return typed;
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ppm=30001 | Hormone strength runs from 0 to 30,000 ppm",
        "ppm=0.3 | Did you mean 3,000 ppm (0.3 %)?",
        "ppm=0,3 | Did you mean 3,000 ppm (0.3 %)?",
        "ppm=0.8 | Did you mean 8,000 ppm (0.8 %)?",
        "ppm=-5 | is not a count",
        "ppm=3,5 | is not a count",
        "airC=51 | Air runs from 0 to 50",
        "airC=-1 | Air runs from 0 to 50",
        "mistOnS=60; mistEveryMin=1 | The mist is on as long as from one burst to the next",
        "mistOnS=10; mistEveryMin=0 | Type the minutes from one burst of mist to the next",
        "shadePercent=101 | Shade runs from 0 to 100 %",
        "humidityPercent=120 | Humidity runs from 0 to 100 %",
      })
  void what_cannot_be_is_refused(String boxes, String sentence) {
    assertThatThrownBy(() -> read(typed(boxes))).hasMessageContaining(sentence);
  }

  @Test
  void everything_that_is_wrong_is_said_at_once() {
    assertThatThrownBy(() -> read(typed("ppm=30001; shadePercent=150; lengthMm=4 in; dipS=-1")))
        .isInstanceOfSatisfying(
            Refused.class,
            refused ->
                assertThat(refused.problems())
                    .extracting(Problem::field)
                    .containsExactlyInAnyOrder("ppm", "shade_percent", "lengthMm", "dipS"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ppm=10001 | ppm | above the usual 10,000 ppm for softwood",
        "ppm=30000 | ppm | 30,000 ppm is 3 %",
        "ppm=3 | ppm | Did you mean 3 %, which is 30,000 ppm?",
        "ppm=1001; dipS=11 | dip_s | A dip of 11 s in 1,001 ppm",
        "lengthMm=49 | length_mm | usually 50 to 150 mm",
        "lengthMm=151 | length_mm | usually 50 to 150 mm",
        "solutionMadeOn=2022-05-09 | solution_made_on | The solution is 31 days old",
        "bottomHeatC=15.9 | bottom_heat_c | roots come between 16 and 29",
        "bottomHeatC=29.1 | bottom_heat_c | roots come between 16 and 29",
        "airC=38.5 | air_c | scorch above 38",
        "mistEveryMin=120 | mist_every_min | two hours without mist",
      })
  void what_is_unusual_is_asked_about_at_its_field(String boxes, String field, String sentence) {
    List<Problem> questions = read(typed(boxes)).unusual();
    assertThat(questions).extracting(Problem::field).containsExactly(field);
    assertThat(questions.get(0).sentence()).contains(sentence);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ppm=2000; dipS=3; lengthMm=90; bottomHeatC=23",
        "ppm=10000; dipS=10; lengthMm=150; bottomHeatC=29",
        "ppm=0; dipS=86400; lengthMm=50; bottomHeatC=16",
        "ppm=1000; dipS=60",
        "cutting=semi-hardwood; ppm=12000",
        "solutionMadeOn=2022-05-10",
        "airC=38; mistOnS=6; mistEveryMin=8; shadePercent=50; humidityPercent=95",
      })
  void what_is_usual_passes_without_a_question(String boxes) {
    assertThat(read(typed(boxes)).unusual()).isEmpty();
  }

  @Test
  void a_strength_is_kept_as_it_was_typed() {
    assertThat(read(Map.of("ppm", "30000")).treatment().ppm()).isEqualTo(30_000);
  }
}
