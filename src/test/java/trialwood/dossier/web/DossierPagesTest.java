package trialwood.dossier.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.container.Nursery;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.Traits;
import trialwood.dossier.Disclosure;
import trialwood.dossier.Disclosures;
import trialwood.dossier.FilingRoute;
import trialwood.dossier.FilingRoutes;
import trialwood.dossier.Filings;
import trialwood.dossier.Grace;
import trialwood.dossier.Term;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.people.Role;
import trialwood.record.Recorder;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Import(Nursery.class)
@Transactional
class DossierPagesTest {

  private static final LocalDate SALE = LocalDate.of(2025, 5, 3);
  private static final LocalDate HEARD = LocalDate.of(2025, 10, 29);
  private static final String CAUTION = "a licensed practitioner decides";

  @Autowired MockMvc web;
  @Autowired Nursery nursery;
  @Autowired Candidates candidates;
  @Autowired Traits traits;
  @Autowired FilingRoutes routes;
  @Autowired Disclosures disclosures;
  @Autowired Filings filings;
  @Autowired Recorder recorder;
  @Autowired List<EvidenceSource> sources;

  private UUID gannet;

  @BeforeEach
  void a_candidate_with_ten_measured_leaves() {
    gannet = nursery.accession("D18-02");
    candidates.saveAndFlush(new Candidate(gannet));
    routes.saveAndFlush(route("US-PP", "United States plant patent", new Grace(1, 1, 1)));
    List<UUID> plants =
        nursery.numbered(nursery.lot("22-D18-02-G1", "D18-02", 10), "22-D18-02-G1", 10);
    nursery.measured(
        plants,
        traits.save(leaf("LEAFLEN", "Leaf length")),
        LocalDate.of(2025, 8, 7),
        71,
        72,
        73,
        74,
        75,
        76,
        77,
        78,
        79,
        80);
    traits.saveAndFlush(leaf("PETIOLE", "Petiole length"));
  }

  private static FilingRoute route(String code, String name, Grace grace) {
    return new FilingRoute(
        code,
        name,
        "US",
        "the law",
        grace,
        Set.of(Disclosure.Kind.SALE),
        new Term(12, 20, 20),
        FilingRoute.Basis.IN_PART);
  }

  private Trait leaf(String code, String name) {
    return new Trait(
        nursery.crop(),
        code,
        name,
        TraitKind.MEASUREMENT,
        "mm",
        BigDecimal.ZERO,
        new BigDecimal("400"),
        0,
        Better.NEITHER,
        null,
        null,
        Set.of("plant"),
        "leaf",
        true);
  }

  private ResultActions open(String address) throws Exception {
    return web.perform(get(address).with(Someone.as(Role.DOSSIER)));
  }

  private ResultActions send(String address, Map<String, String> typed) throws Exception {
    MockHttpServletRequestBuilder form = post(address).with(Someone.as(Role.DOSSIER)).with(csrf());
    form.param("formKey", UUID.randomUUID().toString());
    typed.forEach((box, text) -> form.param(box, text));
    return web.perform(form);
  }

  private Evidence ask(String metric, LocalDate asOf) {
    EvidenceSource source =
        sources.stream()
            .filter(it -> it.metrics().stream().anyMatch(one -> one.key().equals(metric)))
            .findFirst()
            .orElseThrow();
    return source.evidence(new Ask(metric, null, null), Set.of(gannet), asOf).get(gannet);
  }

  @Test
  void a_sale_that_is_logged_starts_a_clock_and_a_filing_stops_it() throws Exception {
    send(
            "/dossiers/D18-02/disclosures/new",
            Map.of("on", "3 May 2025", "kind", "SALE", "territory", "US", "number", "12"))
        .andExpect(redirectedUrl("/dossiers/D18-02"));
    assertThat(ask("dossier.days-left", HEARD).value()).isEqualTo(186);
    assertThat(ask("dossier.filed", HEARD).value()).isZero();

    send(
            "/dossiers/D18-02/filings/new",
            Map.of("on", "20 Mar 2026", "route", "US-PP", "number", "PR-2026-1"))
        .andExpect(redirectedUrl("/dossiers/D18-02"));
    assertThat(ask("dossier.filed", LocalDate.of(2026, 4, 1)).value()).isEqualTo(1);
    open("/dossiers/D18-02")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("filed with 44 days to spare")))
        .andExpect(content().string(containsString("PR-2026-1")))
        .andExpect(content().string(containsString(CAUTION)));
    open("/dossiers")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("D18-02")));
  }

  @Test
  void a_clock_that_ran_out_leaves_no_days_and_is_not_taken_for_no_clock() throws Exception {
    send(
            "/dossiers/D18-02/disclosures/new",
            Map.of("on", "3 May 2025", "kind", "SALE", "territory", "US", "number", "12"))
        .andExpect(redirectedUrl("/dossiers/D18-02"));

    Evidence late = ask("dossier.days-left", LocalDate.of(2026, 6, 1));

    assertThat(late.moot()).isFalse();
    assertThat(late.value()).isZero();
    assertThat(late.remarks()).anyMatch(it -> it.contains("ran out on"));
  }

  @Test
  void what_is_wrong_with_a_disclosure_is_said_and_what_was_typed_stays() throws Exception {
    send("/dossiers/D18-02/disclosures/new", Map.of("on", "soon", "toWhom", "a village"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Choose what was done.")))
        .andExpect(content().string(containsString("a village")));
    send("/dossiers/D18-02/filings/new", Map.of("on", "20 Mar 2026", "route", "NONE"))
        .andExpect(content().string(containsString("Choose the route.")));
    assertThat(disclosures.standing(Set.of(gannet), HEARD)).isEmpty();
    assertThat(filings.findAll()).isEmpty();
  }

  @Test
  void a_trait_counts_as_described_from_ten_plants_on() throws Exception {
    assertThat(ask("dossier.described", HEARD).value()).isEqualTo(50);
    assertThat(ask("dossier.origin", HEARD).value()).isZero();
    assertThat(ask("dossier.days-left", HEARD).moot()).isTrue();
    assertThat(ask("dossier.days-left", HEARD).counted()).isEqualTo("no clock runs");
    open("/dossiers/D18-02")
        .andExpect(content().string(containsString("75.5\u00a0mm")))
        .andExpect(content().string(containsString("Petiole length: 0 of 10")));
  }

  @Test
  void the_print_says_what_the_page_says() throws Exception {
    disclosures.saveAndFlush(
        new Disclosure(
            gannet,
            SALE,
            Disclosure.Kind.SALE,
            "US",
            12,
            null,
            null,
            HEARD,
            null,
            recorder.by(null)));

    byte[] pdf = open("/dossiers/D18-02.pdf").andReturn().getResponse().getContentAsByteArray();

    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document).replace('\u00a0', ' ');
      assertThat(text)
          .contains("Dossier of D18-02")
          .contains(CAUTION)
          .contains("Page 1 of")
          .containsPattern("Leaf length\\s+10\\s+1\\s+75\\.5 mm\\s+3\\.0")
          .contains("3 May 2026");
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
    }
  }

  @Test
  void a_dossier_of_nobody_is_not_found() throws Exception {
    open("/dossiers/NOBODY").andExpect(status().isNotFound());
    open("/dossiers/NOBODY.pdf").andExpect(status().isNotFound());
  }
}
