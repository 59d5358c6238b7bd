package trialwood.arithmetic;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.web.util.UriComponentsBuilder;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** The arithmetic itself is tested with its classes; here are the boxes and what they say. */
@ApplicationTest
class ArithmeticPagesTest {

  @Autowired MockMvcTester browser;

  /** By calculation, each as on the page of the sum. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dilution?stock=10000&stockUnit=ppm&wanted=0.3&wantedUnit=percent&litres=1 | 300.0 mL",
        "dilution?stock=1&stockUnit=percent&wanted=3000&wantedUnit=mgl&litres=1 | 700.0 mL",
        "weigh-in?wanted=3000&wantedUnit=ppm&litres=0,5&purity=90 | 1.667 g",
        "salt?strength=1000&strengthUnit=ppm&form=kiba | 842 ppm",
        "cuttings?target=100&rooted=85&weaned=95&potted=97&wintered=95&margin=10 | 148 cuttings",
        "cuttings?target=100&rooted=85&weaned=95&potted=97&wintered=95&margin=0 | 135 cuttings",
        "seed?target=2000&emerged=71.3&pricked=90&established=95 | 3 281 seeds",
        "trays?cuttings=300&cells=72 | 12 of 72",
        "medium?pots=500&litres=2.8 | 1.40 m³",
        "cell?litres=4.92&cells=50 | 98.4 mL",
        "pots?distance=10&unit=in&area=1 | 144.0",
        "pots?distance=14&unit=in&area=1 | 84.8",
        "plants?inRow=3&between=8&unit=ft | 1 815",
        "plants?inRow=0.9144&between=2.4384&unit=m | 4 485",
        "length?length=24&unit=in | 61.0"
      })
  void the_address_of_an_answer_is_enough_to_see_it(String address, String answer) {
    assertThat(page(address)).contains(answer);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "dilution?stock=0&wanted=1&litres=1 | Type a number above 0.",
        "dilution?stock=-5&wanted=1&litres=1 | Type a number above 0.",
        "dilution?stock=&wanted=1&litres=1 | Type a number.",
        "dilution?stock=much&wanted=1&litres=1 | “much” is not a number.",
        "dilution?stock=1000&wanted=2000&litres=1 | Water only thins",
        "dilution?stock=101&stockUnit=percent&wanted=1&litres=1 | at most 100 %",
        "salt?strength=85&strengthUnit=percent&form=iba | Even the pure salt holds only 84.2 %",
        "weigh-in?wanted=3000&litres=1&purity=101 | A rate is at most 100 %.",
        "cuttings?target=100&rooted=0.85&weaned=95&potted=97&wintered=95 | 85, not 0.85",
        "cuttings?target=100&rooted=&weaned=95&potted=97&wintered=95 | Type a number.",
        "cuttings?target=1&candidate=ZZ-9&rooted=1 | No accession has the code “ZZ-9”.",
        "trays?cuttings=0&cells=24 | Type a number above 0.",
        "trays?cuttings=2.5&cells=24 | “2.5” is not a count.",
      })
  void what_cannot_be_computed_with_is_said_beside_its_box(String address, String sentence) {
    assertThat(page(address)).contains("to put right", sentence).doesNotContain("answer-title");
  }

  @Test
  void a_strength_that_nobody_uses_is_asked_about() {
    assertThat(page("dilution?stock=1000&wanted=0.3&wantedUnit=ppm&litres=1"))
        .contains("Weaker than 10 ppm is unusual.");
    assertThat(page("dilution?stock=5&stockUnit=percent&wanted=3000&litres=1"))
        .contains("Stronger than 30,000 ppm (3 %) is unusual.");
  }

  @Test
  void what_was_typed_stays_and_what_is_usual_stands_there_at_first() {
    assertThat(page("dilution?stock=many&wanted=0,3&wantedUnit=percent&litres=2"))
        .contains("value=\"many\"", "value=\"0,3\"", "value=\"percent\" checked", "value=\"2\"");
    assertThat(page("dilution")).contains("value=\"1\"").doesNotContain("to put right");
  }

  @ParameterizedTest
  @ValueSource(strings = {"dilution", "weigh-in", "salt"})
  void where_hormone_is_handled_the_label_comes_first(String sum) {
    assertThat(page(sum)).contains("the product label is the law");
  }

  @Test
  void there_is_no_sum_of_another_name() {
    assertThat(browser.get().uri("/arithmetic/alchemy").with(Someone.as(Role.READER)).exchange())
        .hasStatus(HttpStatus.NOT_FOUND);
  }

  private String page(String address) {
    var answer =
        browser
            .get()
            .uri(UriComponentsBuilder.fromUriString("/arithmetic/" + address).build().toUri())
            .with(Someone.as(Role.READER))
            .exchange();
    assertThat(answer).hasStatusOk();
    return new String(answer.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8)
        .replace('\u00a0', ' ')
        .replace('\u202f', ' ');
  }
}
