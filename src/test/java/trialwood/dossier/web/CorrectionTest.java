package trialwood.dossier.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MockMvcTester.MockMvcRequestBuilder;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.container.Nursery;
import trialwood.dossier.Clocks;
import trialwood.dossier.Disclosure;
import trialwood.dossier.Disclosures;
import trialwood.dossier.Filing;
import trialwood.dossier.FilingRoute;
import trialwood.dossier.FilingRoutes;
import trialwood.dossier.Filings;
import trialwood.dossier.Grace;
import trialwood.dossier.RouteClock;
import trialwood.dossier.Term;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/**
 * The desk hears of a sale late, files, and puts right what was logged wrongly. Periods of one,
 * four and six years: UPOV 1991 Act, Article 6(1), as in reference/standards/novelty_rules.csv.
 */
@ApplicationTest
@Import(Nursery.class)
@Transactional
class CorrectionTest {

  private static final LocalDate SALE = LocalDate.of(2025, 5, 3);
  private static final LocalDate HEARD = LocalDate.of(2025, 10, 29);
  private static final LocalDate FILED = LocalDate.of(2026, 3, 20);

  @Autowired MockMvcTester web;
  @Autowired Nursery nursery;
  @Autowired Candidates candidates;
  @Autowired FilingRoutes routes;
  @Autowired Disclosures disclosures;
  @Autowired Filings filings;
  @Autowired Clocks clocks;

  private UUID gannet;

  @BeforeEach
  void twelve_plants_were_sold_at_home_without_an_agreement() {
    gannet = nursery.accession("D18-02");
    candidates.saveAndFlush(new Candidate(gannet));
    routes.saveAndFlush(route("HOME", "US"));
    routes.saveAndFlush(route("ELSEWHERE", "EU"));
    assertThat(send("/dossiers/D18-02/disclosures/new", sale("3 May 2025")))
        .hasRedirectedUrl("/dossiers/D18-02");
  }

  private static FilingRoute route(String code, String territory) {
    return new FilingRoute(
        code,
        "Breeder’s right, " + territory,
        territory,
        null,
        new Grace(1, 4, 6),
        Set.of(Disclosure.Kind.SALE),
        new Term(12, 20, 25),
        FilingRoute.Basis.IN_PART);
  }

  @Test
  void each_territory_has_its_deadline_and_the_trees_period_is_a_question() {
    RouteClock home = clock("HOME", HEARD);
    RouteClock elsewhere = clock("ELSEWHERE", HEARD);

    assertThat(home.clock().last()).isEqualTo("2026-05-03");
    assertThat(home.clock().dependsOnTree()).isFalse();
    assertThat(home.clock().daysLeft(HEARD)).isEqualTo(186);
    assertThat(home.standing(HEARD)).isEqualTo("186 days left");
    assertThat(elsewhere.clock().last()).isEqualTo("2029-05-03");
    assertThat(elsewhere.clock().lastIfTree()).isEqualTo("2031-05-03");
    assertThat(page())
        .contains("Only if treated as a tree: ask", "3\u00a0May\u00a02031")
        .contains("Not legal advice", "a licensed practitioner decides");
  }

  @Test
  void a_filing_closes_the_alarm_at_home_with_44_days_to_spare() {
    file("20 Mar 2026");

    assertThat(clock("HOME", FILED).isOpen(FILED)).isFalse();
    assertThat(clock("HOME", FILED).standing(FILED)).isEqualTo("filed with 44 days to spare");
    assertThat(clock("ELSEWHERE", FILED).isOpen(FILED)).isTrue();
  }

  @Test
  void a_disclosure_cannot_be_changed_without_a_reason() {
    assertThat(send(correct("disclosures", disclosure().id()), sale("4 May 2025")))
        .hasStatusOk()
        .bodyText()
        .contains("Say what was wrong.", "4 May 2025");
    assertThat(disclosure().onDate()).isEqualTo(SALE);
  }

  @Test
  void a_corrected_disclosure_moves_its_clocks_and_keeps_what_was_said_before() {
    Disclosure first = disclosure();
    assertThat(web.get().uri(correct("disclosures", first.id())).with(preparer()))
        .hasStatusOk()
        .bodyText()
        .contains("value=\"2025-05-03\"", "value=\"12\"");

    assertThat(
            send(
                correct("disclosures", first.id()),
                with(sale("26 Apr 2025"), "supersedeReason", "The sale was a week before.")))
        .hasRedirectedUrl("/dossiers/D18-02");

    assertThat(clock("HOME", HEARD).clock().last()).isEqualTo("2026-04-26");
    assertThat(disclosures.findById(first.id())).map(Disclosure::onDate).hasValue(SALE);
    assertThat(page())
        .contains("Before: sale, 3\u00a0May\u00a02025, US, 12\u00a0plants, no agreement.")
        .contains("by dossier: The sale was a week before.");
  }

  @Test
  void only_what_stands_can_be_corrected() {
    UUID first = disclosure().id();
    Map<String, String> again = with(sale("2 May 2025"), "supersedeReason", "A day earlier.");
    send(correct("disclosures", first), again).exchange();

    assertThat(send(correct("disclosures", first), again))
        .hasStatusOk()
        .bodyText()
        .contains("Somebody has corrected this meanwhile.");
    assertThat(web.get().uri(correct("disclosures", UUID.randomUUID())).with(preparer()))
        .hasStatus(404);
  }

  @Test
  void a_sale_that_never_was_is_struck_out_and_its_clocks_stop() {
    assertThat(
            send(
                correct("disclosures", disclosure().id()),
                Map.of("struckOut", "true", "supersedeReason", "They were D18-01.")))
        .hasRedirectedUrl("/dossiers/D18-02");

    assertThat(clocks.of(Set.of(gannet), HEARD)).isEmpty();
    assertThat(page()).contains("sale, struck out", "They were D18-01.", "No disclosure has");
  }

  @Test
  void a_filing_is_corrected_the_same_way() {
    file("21 Mar 2026");
    Filing first = filings.standing(Set.of(gannet), LocalDate.of(2026, 4, 1)).get(0);
    Map<String, String> right = Map.of("on", "20 Mar 2026", "route", "HOME", "number", "PR-1");

    assertThat(send(correct("filings", first.id()), right))
        .bodyText()
        .contains("Say what was wrong.");
    assertThat(
            send(
                correct("filings", first.id()),
                with(right, "supersedeReason", "The receipt says the 20th.")))
        .hasRedirectedUrl("/dossiers/D18-02");

    assertThat(clock("HOME", FILED).standing(FILED)).isEqualTo("filed with 44 days to spare");
    assertThat(page()).contains("Before:", "21\u00a0Mar\u00a02026", "The receipt says the 20th.");
  }

  @Test
  void who_only_reads_is_offered_no_correction() {
    assertThat(web.get().uri("/dossiers/D18-02").with(Someone.as(Role.READER)))
        .hasStatusOk()
        .bodyText()
        .doesNotContain("/correct");
    assertThat(page()).contains("/correct");
  }

  private Disclosure disclosure() {
    return disclosures.standing(Set.of(gannet), LocalDate.of(2026, 11, 1)).get(0);
  }

  private RouteClock clock(String route, LocalDate asOf) {
    return clocks.of(Set.of(gannet), asOf).get(gannet).stream()
        .filter(it -> it.route().code().equals(route))
        .findFirst()
        .orElseThrow();
  }

  private void file(String on) {
    assertThat(
            send("/dossiers/D18-02/filings/new", Map.of("on", on, "route", "HOME", "number", "PR")))
        .hasRedirectedUrl("/dossiers/D18-02");
  }

  private static Map<String, String> sale(String on) {
    return Map.of("on", on, "kind", "SALE", "territory", "US", "number", "12");
  }

  private static Map<String, String> with(Map<String, String> typed, String box, String text) {
    Map<String, String> all = new HashMap<>(typed);
    all.put(box, text);
    return all;
  }

  private static String correct(String what, UUID id) {
    return "/dossiers/D18-02/%s/%s/correct".formatted(what, id);
  }

  private String page() {
    MvcTestResult page = web.get().uri("/dossiers/D18-02").with(preparer()).exchange();
    assertThat(page).hasStatusOk();
    return new String(page.getResponse().getContentAsByteArray(), StandardCharsets.UTF_8);
  }

  private MockMvcRequestBuilder send(String address, Map<String, String> typed) {
    MockMvcRequestBuilder form =
        web.post()
            .uri(address)
            .with(preparer())
            .with(csrf())
            .param("formKey", UUID.randomUUID().toString());
    typed.forEach((box, text) -> form.param(box, text));
    return form;
  }

  private static RequestPostProcessor preparer() {
    return Someone.as(Role.DOSSIER);
  }
}
