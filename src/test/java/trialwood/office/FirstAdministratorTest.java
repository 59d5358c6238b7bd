package trialwood.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.people.Accounts;
import trialwood.people.FirstLink;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;

@ApplicationTest
class FirstAdministratorTest {

  private static final String PASSWORD = "twelve rooted cuttings";

  @Autowired MockMvcTester browser;
  @Autowired FirstLink link;
  @Autowired Accounts accounts;
  @Autowired JdbcClient jdbc;

  @BeforeEach
  void nobody_has_an_account() {
    accounts.deleteAll();
  }

  @Test
  void the_link_makes_one_administrator_and_is_used_up() {
    String token = link.issue().orElseThrow();
    assertThat(browser.get().uri("/first/" + token)).hasStatusOk();

    assertThat(make(token, UUID.randomUUID(), "mira", PASSWORD)).hasRedirectedUrl("/sign-in");

    assertThat(accounts.findByUsername("mira").orElseThrow().role()).isEqualTo(Role.ADMINISTRATOR);
    assertThat(browser.get().uri("/first/" + token)).hasStatus(404);
    assertThat(make(token, UUID.randomUUID(), "second", PASSWORD))
        .hasStatusOk()
        .bodyText()
        .contains("This link is used up");
    assertThat(accounts.count()).isEqualTo(1);
    assertThat(link.issue()).isEmpty();
  }

  @Test
  void the_form_sent_twice_is_stored_once_and_answered_alike() {
    String token = link.issue().orElseThrow();
    UUID key = UUID.randomUUID();

    assertThat(make(token, key, "mira", PASSWORD)).hasRedirectedUrl("/sign-in");
    assertThat(make(token, key, "mira", PASSWORD)).hasRedirectedUrl("/sign-in");

    assertThat(accounts.count()).isEqualTo(1);
  }

  @Test
  void a_short_password_is_refused_and_the_link_still_holds() {
    String token = link.issue().orElseThrow();

    assertThat(make(token, UUID.randomUUID(), "mira", "short"))
        .hasStatusOk()
        .bodyText()
        .contains("at least 12 characters", "value=\"mira\"")
        .doesNotContain("value=\"short\"");

    assertThat(link.holds(token)).isTrue();
    assertThat(accounts.count()).isZero();
  }

  @Test
  void a_password_the_hash_would_cut_off_is_refused() {
    String token = link.issue().orElseThrow();

    assertThat(make(token, UUID.randomUUID(), "mira", "ä".repeat(37)))
        .hasStatusOk()
        .bodyText()
        .contains("The password is too long");
  }

  @Test
  void after_a_day_the_link_holds_no_longer() {
    String token = link.issue().orElseThrow();
    jdbc.sql("update first_link set expires_at = timestamp with time zone '2020-01-01 00:00:00Z'")
        .update();

    assertThat(browser.get().uri("/first/" + token)).hasStatus(404);
  }

  @Test
  void a_new_link_ends_the_one_before_and_only_its_digest_is_kept() {
    String before = link.issue().orElseThrow();
    String token = link.issue().orElseThrow();

    assertThat(link.holds(before)).isFalse();
    assertThat(jdbc.sql("select digest from first_link").query(String.class).list())
        .doesNotContain(token)
        .allSatisfy(digest -> assertThat(digest).hasSize(64));
  }

  private MvcTestResult make(String token, UUID key, String username, String password) {
    return browser
        .post()
        .uri("/first/" + token)
        .param("formKey", key.toString())
        .param("username", username)
        .param("password", password)
        .with(csrf())
        .exchange();
  }
}
