package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** What a device's outbox hears when it sends. */
@ApplicationTest
class OutboxTest {

  @Autowired MockMvcTester browser;
  @Autowired Persons persons;

  @Test
  void stored_is_said_in_so_many_words_and_twice_the_same() {
    String key = UUID.randomUUID().toString();
    for (int arrival = 1; arrival <= 2; arrival++) {
      assertThat(person(key, "Moss Vetter", "MV").with(csrf()))
          .hasStatus(204)
          .containsHeader(OutboxAnswers.NEXT)
          .hasHeader(OutboxAnswers.HEADER, "seen");
    }
    assertThat(persons.findAll()).filteredOn(it -> it.initials().equals("MV")).hasSize(1);
  }

  @Test
  void what_is_refused_comes_back_as_the_page_with_the_reason() {
    assertThat(person(UUID.randomUUID().toString(), "", "QX").with(csrf()))
        .hasStatus(422)
        .hasHeader(OutboxAnswers.HEADER, "seen")
        .bodyText()
        .contains("value=\"QX\"", "class=\"errors\"");
  }

  @Test
  void a_form_that_a_person_sends_is_answered_as_ever() {
    assertThat(
            browser
                .post()
                .uri("/people/new")
                .with(Someone.as(Role.ADMINISTRATOR))
                .with(csrf())
                .param("name", ""))
        .hasStatusOk()
        .doesNotContainHeader(OutboxAnswers.HEADER);
  }

  @Test
  void a_stale_token_stores_nothing_and_leaves_the_form_to_the_device() {
    MockHttpSession session = new MockHttpSession();
    assertThat(
            person(UUID.randomUUID().toString(), "Late Comer", "LC")
                .session(session)
                .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                .header("Origin", "http://localhost")
                .param("_csrf", "stale"))
        .hasStatus(403)
        .doesNotContainHeader(OutboxAnswers.NEXT);
    assertThat(KeptForm.in(session)).isNull();
    assertThat(persons.findByInitials("LC")).isEmpty();
  }

  @Test
  void being_sent_to_sign_in_is_not_taken_for_stored() {
    assertThat(browser.post().uri("/people/new").header(OutboxAnswers.HEADER, "e1").with(csrf()))
        .hasStatus3xxRedirection()
        .doesNotContainHeader(OutboxAnswers.NEXT);
  }

  @Test
  void a_role_that_may_not_store_it_hears_so() {
    assertThat(
            browser
                .post()
                .uri("/people/new")
                .header(OutboxAnswers.HEADER, "e1")
                .with(Someone.as(Role.READER))
                .with(csrf()))
        .hasStatus(403);
  }

  @Test
  void a_token_is_given_to_those_who_are_signed_in() {
    assertThat(browser.get().uri("/outbox/token").with(Someone.as(Role.BENCH)))
        .hasStatusOk()
        .bodyJson()
        .extractingPath("$.token")
        .asString()
        .isNotBlank();
    assertThat(browser.get().uri("/outbox/token").with(Someone.as(Role.BENCH)))
        .bodyJson()
        .extractingPath("$.account")
        .isEqualTo("bench");
    assertThat(browser.get().uri("/outbox/token"))
        .hasStatusOk()
        .bodyText()
        .isEqualTo("{\"account\":null,\"initials\":null,\"token\":null}");
  }

  @Test
  void the_pages_kept_on_a_device_for_everybody_name_nobody() {
    for (String page : new String[] {"/outbox", "/no-signal"}) {
      assertThat(browser.get().uri(page).with(Someone.as(Role.BREEDER)))
          .hasStatusOk()
          .bodyText()
          .contains("data-edition")
          .doesNotContain("data-account", "breeder");
    }
  }

  @Test
  void the_script_that_answers_without_a_signal_is_asked_for_anew_each_time() {
    assertThat(browser.get().uri(DeviceScript.ADDRESS))
        .hasStatusOk()
        .hasHeader("Cache-Control", "no-cache")
        .hasContentTypeCompatibleWith("text/javascript");
  }

  private MockMvcRequestBuilder person(String key, String name, String initials) {
    return browser
        .post()
        .uri("/people/new")
        .header(OutboxAnswers.HEADER, "e1")
        .with(Someone.as(Role.ADMINISTRATOR))
        .param("formKey", key)
        .param("name", name)
        .param("initials", initials);
  }
}
