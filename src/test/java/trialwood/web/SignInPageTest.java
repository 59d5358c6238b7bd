package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.security.authentication.InternalAuthenticationServiceException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;

@ApplicationTest
class SignInPageTest {

  private static final String PASSWORD = "rain on the mist house";

  @Autowired MockMvcTester browser;
  @Autowired Accounts accounts;
  @Autowired PasswordEncoder encoder;
  @Autowired SignInThrottle throttle;

  @BeforeEach
  void the_breeder_has_an_account() {
    throttle.forget("runa");
    if (accounts.findByUsername("runa").isEmpty()) {
      accounts.save(new Account("runa", encoder.encode(PASSWORD), Role.BREEDER, null, Set.of()));
    }
  }

  @Test
  void the_page_is_open_to_all_and_carries_the_strict_headers() {
    assertThat(browser.get().uri("/sign-in"))
        .hasStatusOk()
        .hasHeader(
            "Content-Security-Policy",
            "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:;"
                + " object-src 'none'; base-uri 'self'; frame-ancestors 'none';"
                + " form-action 'self'")
        .hasHeader("Referrer-Policy", "same-origin")
        .bodyText()
        .contains("<label for=\"username\">User name</label>", "name=\"_csrf\"")
        .doesNotContain("style=\"", "onclick");
  }

  @Test
  void a_wrong_password_is_said_plainly_and_the_name_is_kept() {
    MvcTestResult handedOn = signIn("runa", "guessed");
    assertThat(handedOn).hasForwardedUrl("/sign-in/failed");

    assertThat(failedPage("r<una"))
        .hasStatus(401)
        .bodyText()
        .contains("Name and password do not belong together", "value=\"r&lt;una\"");
  }

  @Test
  void records_that_cannot_be_reached_are_not_called_a_wrong_password() {
    assertThat(
            browser
                .post()
                .uri("/sign-in/failed")
                .param("username", "runa")
                .requestAttr(
                    "SPRING_SECURITY_LAST_EXCEPTION",
                    new InternalAuthenticationServiceException("no connection"))
                .with(csrf()))
        .hasStatus(503)
        .bodyText()
        .contains("The records cannot be reached just now.");
  }

  @Test
  void after_five_wrong_tries_even_the_right_password_has_to_wait() {
    for (int n = 0; n < 5; n++) {
      signIn("runa", "guess " + n);
    }

    MvcTestResult sixth = signIn("runa", PASSWORD);

    assertThat(sixth).hasForwardedUrl("/sign-in/failed");
    assertThat(
            browser
                .post()
                .uri("/sign-in/failed")
                .param("username", "runa")
                .requestAttr(
                    "SPRING_SECURITY_LAST_EXCEPTION",
                    sixth.getRequest().getAttribute("SPRING_SECURITY_LAST_EXCEPTION"))
                .with(csrf()))
        .hasStatus(429)
        .bodyText()
        .contains("Wait a quarter of an hour");
  }

  @Test
  void clumsy_and_hostile_sign_ins_are_refused_and_break_nothing() {
    assertThat(signIn("", "")).hasForwardedUrl("/sign-in/failed");
    assertThat(signIn("x".repeat(10_000), "y".repeat(10_000))).hasForwardedUrl("/sign-in/failed");
    assertThat(signIn("runa' or '1'='1", "x")).hasForwardedUrl("/sign-in/failed");
    assertThat(signIn("run\0a", "x")).hasStatus(400);
    assertThat(browser.post().uri("/sign-in").param("username", "runa")).hasStatus(403);
  }

  private MvcTestResult failedPage(String name) {
    return browser.post().uri("/sign-in/failed").param("username", name).with(csrf()).exchange();
  }

  private MvcTestResult signIn(String name, String password) {
    return browser
        .post()
        .uri("/sign-in")
        .param("username", name)
        .param("password", password)
        .with(csrf())
        .exchange();
  }
}
