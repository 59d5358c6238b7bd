package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpSession;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;

/** A form that is sent after the session has ended. */
@ApplicationTest
class KeptFormTest {

  private static final String OURS = "http://localhost";
  private static final String PASSWORD = "rain on the mist house";

  @Autowired MockMvcTester browser;
  @Autowired Accounts accounts;
  @Autowired Persons persons;
  @Autowired PasswordEncoder encoder;

  private final MockHttpSession session = new MockHttpSession();

  @BeforeEach
  void the_office_has_an_account() {
    if (accounts.findByUsername("tilda").isEmpty()) {
      accounts.save(
          new Account("tilda", encoder.encode(PASSWORD), Role.ADMINISTRATOR, null, Set.of()));
    }
  }

  @Test
  void it_comes_back_as_it_was_typed_and_is_stored_once_it_is_sent_again() {
    String key = UUID.randomUUID().toString();
    assertThat(
            late(OURS).param("formKey", key).param("name", "Wren <Okoro>").param("initials", "WQ"))
        .hasStatus3xxRedirection()
        .hasRedirectedUrl("/kept-form");
    assertThat(browser.get().uri("/kept-form").session(session)).hasRedirectedUrl("/sign-in");
    assertThat(browser.get().uri("/sign-in").session(session))
        .bodyText()
        .contains("Your form is kept")
        .doesNotContain("Wren");

    assertThat(signIn()).redirectedUrl().contains("/kept-form");
    assertThat(browser.get().uri("/kept-form").session(session))
        .hasStatusOk()
        .bodyText()
        .contains("action=\"/people/new\"", "value=\"Wren &lt;Okoro&gt;\"", "name=\"lookAgain\"")
        .doesNotContain("stale token");

    MvcTestResult shown = send(key).param("lookAgain", "yes").exchange();
    assertThat(shown).hasStatusOk();
    assertThat(shown).bodyText().contains("Wren &lt;Okoro&gt;", "Look it over");
    assertThat(shown).bodyText().doesNotContain("lookAgain");
    assertThat(persons.findByInitials("WQ")).isEmpty();

    assertThat(send(key)).hasStatus3xxRedirection();
    assertThat(send(key)).hasStatus3xxRedirection();
    assertThat(persons.findByInitials("WQ")).isPresent();
  }

  @Test
  void a_form_from_a_strange_page_is_refused_and_not_kept() {
    assertThat(late("https://elsewhere.example").param("name", "Mallow")).hasStatus(403);
    assertThat(browser.post().uri("/people/new").session(session).param("name", "Mallow"))
        .hasStatus(403);
    assertThat(KeptForm.in(session)).isNull();
  }

  @Test
  void neither_passwords_nor_files_nor_whole_books_are_kept() {
    late(OURS).param("username", "wren").param("newPassword", "in the clear").exchange();
    assertThat(KeptForm.in(session))
        .extracting(KeptForm::boxes)
        .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.list(KeptForm.Box.class))
        .containsExactly(new KeptForm.Box("username", "wren"));
    session.clearAttributes();

    assertThat(late(OURS).param("name", "x".repeat(100_001))).hasStatus(403);
    assertThat(
            browser
                .post()
                .uri("/import")
                .multipart()
                .file(new MockMultipartFile("file", "rows".getBytes()))
                .session(session)
                .header("Origin", OURS))
        .hasStatus(403);
    assertThat(KeptForm.in(session)).isNull();
  }

  @Test
  void the_door_is_as_narrow_as_ever_when_it_is_opened_again() {
    assertThat(
            browser
                .post()
                .uri("/people/new")
                .param("lookAgain", "yes")
                .with(trialwood.testing.Someone.as(Role.READER))
                .with(csrf()))
        .hasStatus(403);
  }

  @Test
  void who_has_no_form_kept_is_led_to_today() {
    assertThat(browser.get().uri("/kept-form").with(trialwood.testing.Someone.as(Role.READER)))
        .hasRedirectedUrl("/");
  }

  private MockMvcRequestBuilder late(String origin) {
    return browser
        .post()
        .uri("/people/new")
        .session(session)
        .contentType(MediaType.APPLICATION_FORM_URLENCODED)
        .header("Origin", origin)
        .param("_csrf", "stale token");
  }

  private MockMvcRequestBuilder send(String key) {
    return browser
        .post()
        .uri("/people/new")
        .session(session)
        .param("formKey", key)
        .param("name", "Wren <Okoro>")
        .param("initials", "WQ")
        .with(csrf());
  }

  private MvcTestResult signIn() {
    return browser
        .post()
        .uri("/sign-in")
        .session(session)
        .param("username", "tilda")
        .param("password", PASSWORD)
        .with(csrf())
        .exchange();
  }
}
