package trialwood.season.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.HttpStatus;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Household;
import trialwood.people.Role;
import trialwood.season.FeedThrottle;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
class CalendarDoorTest {

  @Autowired MockMvcTester browser;
  @Autowired Accounts accounts;
  @Autowired Household household;
  @Autowired JdbcClient jdbc;

  private UUID account;

  @BeforeEach
  void the_phone_of_the_bench_has_an_account() {
    account =
        Objects.requireNonNull(
            accounts
                .findByUsername("bench")
                .orElseGet(
                    () -> accounts.save(new Account("bench", "", Role.BENCH, null, Set.of())))
                .id());
    household.reopen(account);
  }

  @Test
  void a_calendar_is_fetched_without_signing_in() {
    MvcTestResult answer = fetch(make());
    assertThat(answer)
        .hasStatusOk()
        .headers()
        .hasValue("Content-Type", "text/calendar;charset=UTF-8")
        .hasValue("Cache-Control", "max-age=900, must-revalidate, private");
    assertThat(answer.getRequest().getSession(false)).isNull();
    assertThat(Biweekly.parse(text(answer)).first().getVersion()).isEqualTo(ICalVersion.V2_0);
  }

  @Test
  void what_has_not_changed_is_not_sent_again() {
    String path = make();
    String tag = fetch(path).getResponse().getHeader("ETag");
    assertThat(tag).isNotBlank();
    assertThat(browser.get().uri(path).header("If-None-Match", tag).exchange())
        .hasStatus(HttpStatus.NOT_MODIFIED);
  }

  @Test
  void the_address_is_shown_once_and_its_secret_is_stored_nowhere() {
    String path = make();
    String secret = path.replaceAll(".*/|\\.ics", "");
    assertThat(secret).hasSize(43);
    assertThat(page()).doesNotContain(secret).contains("It cannot be shown again.");
    assertThat(
            jdbc.sql("select digest from calendar_feed where account_id = :account")
                .param("account", account)
                .query(String.class)
                .single())
        .hasSize(64)
        .doesNotContain(secret);
  }

  @Test
  void a_new_address_ends_the_one_before() {
    String before = make();
    String after = make();
    assertThat(fetch(before)).hasStatus(HttpStatus.NOT_FOUND);
    assertThat(fetch(after)).hasStatusOk();
  }

  @Test
  void an_address_taken_back_leads_nowhere() {
    String path = make();
    assertThat(post("/my-calendar/revoke")).hasRedirectedUrl("/my-calendar");
    assertThat(fetch(path)).hasStatus(HttpStatus.NOT_FOUND);
    assertThat(page()).contains("You have no address yet.");
  }

  @Test
  void a_closed_account_has_no_calendar() {
    String path = make();
    household.close(account);
    assertThat(fetch(path)).hasStatus(HttpStatus.NOT_FOUND);
  }

  @Test
  void a_wrong_secret_is_not_found() {
    assertThat(fetch("/calendar/x.ics")).hasStatus(HttpStatus.NOT_FOUND);
    assertThat(fetch("/calendar/" + "A".repeat(43) + ".ics")).hasStatus(HttpStatus.NOT_FOUND);
  }

  @Test
  void a_program_that_fetches_without_end_has_to_wait() {
    String path = make();
    for (int i = 0; i < FeedThrottle.FETCHES; i++) {
      assertThat(fetch(path)).hasStatusOk();
    }
    assertThat(fetch(path))
        .hasStatus(HttpStatus.TOO_MANY_REQUESTS)
        .headers()
        .hasValue("Retry-After", "900");
    assertThat(fetch(make())).hasStatusOk();
  }

  @Test
  void a_cooperator_can_make_none() {
    assertThat(browser.get().uri("/my-calendar").with(Someone.as(Role.COOPERATOR)).exchange())
        .hasStatus(HttpStatus.FORBIDDEN);
  }

  private String make() {
    MvcTestResult made = post("/my-calendar");
    assertThat(made).hasRedirectedUrl("/my-calendar");
    String address = (String) made.getMvcResult().getFlashMap().get("address");
    return address.substring(address.indexOf("/calendar/"));
  }

  private MvcTestResult post(String path) {
    return browser.post().uri(path).with(Someone.as(Role.BENCH)).with(csrf()).exchange();
  }

  private MvcTestResult fetch(String path) {
    return browser.get().uri(path).exchange();
  }

  private String page() {
    return text(browser.get().uri("/my-calendar").with(Someone.as(Role.BENCH)).exchange());
  }

  private static String text(MvcTestResult answer) {
    return new String(
        answer.getResponse().getContentAsByteArray(), java.nio.charset.StandardCharsets.UTF_8);
  }
}
