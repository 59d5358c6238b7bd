package trialwood.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** The day's list of the demo nursery, an invented scenario: three discarded lots still stand. */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
class TodayPageTest {

  private static final String LOT = "22-B18-03-G1";

  @Autowired MockMvcTester browser;

  @Test
  void who_may_write_is_led_to_the_form_and_who_reads_to_the_lot() {
    assertThat(page("/", Role.BENCH)).contains("href=\"/containers/" + LOT + "/out\"");
    assertThat(page("/", Role.READER))
        .contains("href=\"/containers/" + LOT + "\"")
        .doesNotContain("/out\"", "/count\"", "/look\"", "/final-count\"");
  }

  @Test
  void the_file_and_the_worksheet_show_the_rows_of_the_list() {
    String asked = "?kind=clearing&place=amberline%20BED%202";
    assertThat(page("/" + asked, Role.BREEDER)).contains(LOT).doesNotContain("23-A18-04-G3");
    assertThat(page("/today/worksheet" + asked, Role.BREEDER))
        .contains(LOT, "☐")
        .doesNotContain("23-A18-04-G3");
    assertThat(page("/today.csv" + asked, Role.BREEDER))
        .startsWith("\ufeffplace,kind,for,state,from,due,what,why,blocked_by,progress\r\n")
        .contains("Amberline bed 2,Lots to clear,bench,", "Clear lot " + LOT)
        .hasLineCount(2);
  }

  @Test
  void a_dossier_preparer_sees_first_what_is_theirs_and_everything_when_asked() {
    assertThat(page("/", Role.DOSSIER)).doesNotContain(LOT);
    assertThat(page("/?who=everyone", Role.DOSSIER)).contains(LOT);
  }

  @Test
  void nonsense_in_the_address_shows_nothing_and_breaks_nothing() {
    assertThat(page("/?place=nowhere&kind=%27&who=x&state=y&days=-1", Role.BREEDER))
        .contains("Nothing is due for x.");
  }

  private String page(String address, Role role) {
    var answer = browser.get().uri(java.net.URI.create(address)).with(Someone.as(role)).exchange();
    assertThat(answer).hasStatusOk();
    return new String(
        answer.getResponse().getContentAsByteArray(), java.nio.charset.StandardCharsets.UTF_8);
  }
}
