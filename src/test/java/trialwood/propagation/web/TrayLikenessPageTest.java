package trialwood.propagation.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Transactional
class TrayLikenessPageTest {

  private static final String PAGE = "/ground/tray-likeness";

  @Autowired MockMvcTester browser;
  @Autowired Persons persons;

  @Test
  void a_keeper_goes_over_to_the_nurserys_own_trays_and_the_page_says_who_and_why() {
    String by = decider();

    assertThat(send(Role.BREEDER, "OWN", "our mist is even", by)).hasStatus3xxRedirection();

    assertThat(browser.get().uri(PAGE).with(Someone.as(Role.READER)))
        .bodyText()
        .containsSubsequence("the nursery’s own", "in force", "the nursery’s own: our mist is even")
        .doesNotContain("From today on");
    assertThat(send(Role.BREEDER, "OWN", "once more", by)).bodyText().contains("in force already");
  }

  @Test
  void a_choice_without_a_reason_or_of_neither_is_refused_and_stays_typed() {
    assertThat(send(Role.BREEDER, "OWN", " ", decider())).bodyText().contains("Say why.");
    assertThat(send(Role.BREEDER, "THEIRS", "hear say", ""))
        .bodyText()
        .contains("Pick one of the two.", "Pick who decided it.", "hear say");
    assertThat(send(Role.BENCH, "OWN", "our mist is even", decider())).hasStatus(403);
  }

  private String decider() {
    return Objects.toString(persons.save(new Person("ZQ", "Zella Quill", null)).id());
  }

  private MvcTestResult send(Role role, String prior, String reason, String by) {
    return browser
        .post()
        .uri(PAGE)
        .param("formKey", UUID.randomUUID().toString())
        .param("prior", prior)
        .param("reason", reason)
        .param("by", by)
        .with(Someone.as(role))
        .with(csrf())
        .exchange();
  }
}
