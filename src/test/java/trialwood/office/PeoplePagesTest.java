package trialwood.office;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.people.Accounts;
import trialwood.people.Household;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.record.History;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
class PeoplePagesTest {

  @Autowired MockMvcTester browser;
  @Autowired Household household;
  @Autowired Persons persons;
  @Autowired Accounts accounts;
  @Autowired Sites sites;
  @Autowired History history;

  @BeforeEach
  void an_empty_office() {
    accounts.deleteAll();
    persons.deleteAll();
    sites.deleteAll();
  }

  @Test
  void a_person_sent_twice_is_taken_in_once() {
    UUID key = UUID.randomUUID();

    assertThat(add(key.toString(), "ra", "Runa Aldery")).hasRedirectedUrl("/people");
    assertThat(add(key.toString(), "ra", "Runa Aldery")).hasRedirectedUrl("/people");

    assertThat(persons.findAll()).extracting(Person::initials).containsExactly("RA");
  }

  @Test
  void initials_that_somebody_signs_with_are_refused_beside_the_field() {
    household.takeIn("RA", "Runa Aldery", "breeder");

    assertThat(add(UUID.randomUUID().toString(), "ra", "Rolf Ander"))
        .hasStatusOk()
        .bodyText()
        .contains("href=\"#initials\"", "Somebody already signs with RA.", "value=\"Rolf Ander\"");
  }

  @Test
  void a_form_whose_key_is_missing_or_no_key_is_shown_again() {
    assertThat(add("", "RA", "Runa Aldery")).hasStatusOk().bodyText().contains("without its key");
    assertThat(add("zzz", "RA", "Runa Aldery"))
        .hasStatusOk()
        .bodyText()
        .contains("without its key", "value=\"Runa Aldery\"");
    assertThat(persons.count()).isZero();
  }

  @Test
  void a_name_of_ten_thousand_letters_is_refused_in_words() {
    assertThat(add(UUID.randomUUID().toString(), "RA", "x".repeat(10_000)))
        .hasStatusOk()
        .bodyText()
        .contains("A name has at most 80 letters.");
  }

  @Test
  void two_who_change_a_person_at_once_see_both_and_lose_nothing() {
    UUID id = household.takeIn("JT", "Jory Tammet", "propagator").id();
    assertThat(change(id, 0, "Jory Tammet", "head propagator")).hasRedirectedUrl("/people");

    assertThat(change(id, 0, "Jory Tammet-Lund", "propagator"))
        .hasStatusOk()
        .bodyText()
        .contains(
            "Somebody else changed this meanwhile",
            "<td>propagator</td><td>head propagator</td>",
            "<td>Jory Tammet-Lund</td><td>Jory Tammet</td>",
            "name=\"version\" value=\"1\"");
    assertThat(persons.findById(id).orElseThrow().name()).isEqualTo("Jory Tammet");
    assertThat(change(id, 1, "Jory Tammet-Lund", "head propagator")).hasRedirectedUrl("/people");
    assertThat(persons.findById(id).orElseThrow().name()).isEqualTo("Jory Tammet-Lund");
  }

  @Test
  void what_was_said_before_stands_on_the_page() {
    UUID id = household.takeIn("MK", "Mira Kestle", "yard").id();
    change(id, 0, "Mira Kestle", "bench");

    assertThat(history.of(Person.class, id))
        .extracting(past -> past.username() + " " + past.then().duty())
        .containsExactly("administrator bench", "trialwood yard");
    assertThat(browser.get().uri("/people/" + id).with(Someone.as(Role.ADMINISTRATOR)))
        .hasStatusOk()
        .bodyText()
        .contains("What was said before", "Duty: <del>yard</del> → <ins>bench</ins>");
  }

  @Test
  void an_unreadable_id_and_an_unknown_one_are_both_not_found() {
    for (String id : new String[] {"zzz", UUID.randomUUID().toString(), "1 or 1=1", "é"}) {
      assertThat(browser.get().uri("/people/{id}", id).with(Someone.as(Role.ADMINISTRATOR)))
          .as(id)
          .hasStatus(404);
    }
  }

  @Test
  void a_cooperator_needs_a_site_and_nobody_else_has_one() {
    UUID site = sites.save(new Site("CH", "Corrow Hill", null, null, null, null, null)).id();

    assertThat(open("gil", Role.COOPERATOR.name(), null))
        .hasStatusOk()
        .bodyText()
        .contains("Name at least one site");
    assertThat(open("gil", Role.READER.name(), site))
        .hasStatusOk()
        .bodyText()
        .contains("Only a cooperator is bound to sites.", "checked=\"checked\"");
    assertThat(open("gil", "OWNER", null)).hasStatusOk().bodyText().contains("could not be read");
    assertThat(open("gil", "", null)).hasStatusOk().bodyText().contains("Choose what the account");
    assertThat(accounts.count()).isZero();

    assertThat(open("gil", Role.COOPERATOR.name(), site)).hasRedirectedUrl("/people");

    assertThat(accounts.findByUsername("gil").orElseThrow().sites()).containsExactly(site);
    assertThat(browser.get().uri("/people").with(Someone.as(Role.ADMINISTRATOR)))
        .hasStatusOk()
        .bodyText()
        .contains("<td>CH</td>", "aria-current=\"page\"");
  }

  @Test
  void a_closed_account_no_longer_signs_in_until_it_is_opened_again() {
    UUID id = household.open("bench", "a wet and windy day", Role.BENCH, null, Set.of()).id();

    assertThat(press("/accounts/" + id + "/close")).hasRedirectedUrl("/people");
    assertThat(accounts.findById(id).orElseThrow().isEnabled()).isFalse();

    assertThat(press("/accounts/" + id + "/reopen")).hasRedirectedUrl("/people");
    assertThat(accounts.findById(id).orElseThrow().isEnabled()).isTrue();
    assertThat(press("/accounts/" + UUID.randomUUID() + "/close")).hasStatus(404);
  }

  private MvcTestResult add(String key, String initials, String name) {
    return browser
        .post()
        .uri("/people/new")
        .param("formKey", key)
        .param("initials", initials)
        .param("name", name)
        .with(Someone.as(Role.ADMINISTRATOR))
        .with(csrf())
        .exchange();
  }

  private MvcTestResult change(UUID id, int version, String name, String duty) {
    return browser
        .post()
        .uri("/people/" + id)
        .param("formKey", UUID.randomUUID().toString())
        .param("version", Integer.toString(version))
        .param("name", name)
        .param("duty", duty)
        .param("active", "true")
        .with(Someone.as(Role.ADMINISTRATOR))
        .with(csrf())
        .exchange();
  }

  private MvcTestResult open(String username, String role, UUID site) {
    return browser
        .post()
        .uri("/accounts/new")
        .param("formKey", UUID.randomUUID().toString())
        .param("username", username)
        .param("password", "three words and more")
        .param("role", role)
        .param("person", "")
        .param("sites", site == null ? new String[0] : new String[] {site.toString()})
        .with(Someone.as(Role.ADMINISTRATOR))
        .with(csrf())
        .exchange();
  }

  private MvcTestResult press(String address) {
    return browser.post().uri(address).with(Someone.as(Role.ADMINISTRATOR)).with(csrf()).exchange();
  }
}
