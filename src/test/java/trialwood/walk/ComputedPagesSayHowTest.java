package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** Every page of the demo that shows an interval or a chance says how it was come by. */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
class ComputedPagesSayHowTest {

  private static final Pattern COMPUTED =
      Pattern.compile(
          "True share|class=\"interval|with chance|Gain a week|95 % interval|Half of all stuck|tray more|four times in five");

  @Autowired private MockMvcTester mvc;

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "/bench/runs/R21",
        "/bench/runs/R22",
        "/bench/runs/R22L",
        "/bench/runs/R22/days/A18-03",
        "/gates/propagation?asOf=2022-07-24",
        "/gates/propagation/A18-04/further-trays?asOf=2022-07-24",
        "/accessions/A18-04",
        "/gates/trial?asOf=2026-11-11",
        "/containers/22-C18-03-G1",
        "/containers/22-A18-01-G3",
        "/trials/T1/traits/BLOOM",
        "/dossiers/D18-02"
      })
  void a_page_with_an_interval_or_a_chance_says_how_and_from_which_records(String page)
      throws Exception {
    String html = read(page);

    assertThat(html).containsPattern(COMPUTED).contains("How this was computed");
    assertThat(html.split("class=\"how\"", -1))
        .as("each says where the records stand")
        .hasSameSizeAs(html.split("<dt>Records used</dt>\\s*<dd><a href=\"/", -1));
  }

  /** Some answers on this page name no records. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = "/gates/propagation/A18-04?asOf=2022-07-24")
  void a_page_of_one_candidate_says_how_each_answer_was_computed(String page) throws Exception {
    assertThat(read(page)).containsPattern(COMPUTED).contains("How this was computed");
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"/dossiers/C18-03", "/accessions/C18-03", "/candidates", "/containers"})
  void a_page_that_may_come_to_show_one_will_have_to_say_so_too(String page) throws Exception {
    String html = read(page);

    assertThat(html.contains("How this was computed") || !COMPUTED.matcher(html).find()).isTrue();
  }

  private String read(String page) throws Exception {
    var answer = mvc.get().uri(page).with(Someone.as(Role.BREEDER)).exchange();
    assertThat(answer).hasStatusOk();
    return answer.getResponse().getContentAsString();
  }
}
