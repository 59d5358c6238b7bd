package trialwood.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import org.springframework.transaction.annotation.Transactional;
import trialwood.crop.Better;
import trialwood.observation.Observations;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Import(TrialGround.class)
@Transactional
class TrialPagesTest {

  private static final LocalDate PLANTED = LocalDate.of(2024, 4, 8);

  private @Autowired MockMvc web;
  private @Autowired TrialGround ground;
  private @Autowired TrialPlanting planting;
  private @Autowired TrialRecords records;
  private @Autowired Observations observations;
  private @Autowired Trials trials;
  private UUID trial;

  @BeforeEach
  void plant() {
    ground.site("HB", "Home Block");
    ground.site("CH", "Corrow Hill");
    UUID bloom = ground.trait("BLOOM", "weeks", Better.HIGHER, 1);
    trial = ground.trial("T1", 1, "CK-1", "A18-01", "C18-03");
    for (String site : Set.of("HB", "CH")) {
      planting.standAt(trial, ground.id(site), PLANTED);
      ground.plantInOrder(trial, "T1", site, 1, "CK-1", "A18-01", "C18-03");
      for (int entry = 1; entry <= 3; entry++) {
        ground.see("T1-%s-1-%d".formatted(site, entry), "BLOOM", "2024-10-14", 6 + entry);
        if (site.equals("HB")) {
          ground.see("T1-HB-1-" + entry, "BLOOM", "2025-10-14", 7 + entry);
        }
      }
    }
    LocalDate day = LocalDate.of(2025, 7, 19);
    records.report(
        new NewSiteEvent(
            "HAIL-25",
            ground.id("CH"),
            trial,
            day,
            SiteEvent.Kind.HAIL,
            "all plots stripped",
            day,
            LocalDate.of(2025, 12, 31),
            Set.of(bloom),
            Set.of(),
            null));
    observations.flush();
  }

  @Test
  void the_trial_says_first_what_is_left_out_and_why() throws Exception {
    ask(Role.READER, "/trials/T1")
        .andExpect(content().string(containsString("hail 19\u00a0Jul\u00a02025")))
        .andExpect(content().string(containsString("on all plots: BLOOM.")));
    ask(Role.READER, "/trials").andExpect(content().string(containsString("Set T1")));
  }

  @Test
  void the_trait_page_compares_with_the_check_and_names_the_lost_season() throws Exception {
    ask(Role.BREEDER, "/trials/T1/traits/BLOOM?check=CK-1")
        .andExpect(
            content()
                .string(
                    allOf(
                        containsString("Corrow Hill 2025: hail 19 July 2025, 3 plots"),
                        containsString("3 of 3"),
                        containsString("+2.0"),
                        containsString("How this was computed"))));
    ask(Role.BREEDER, "/trials/T1/traits/BLOOM?check=nobody")
        .andExpect(content().string(containsString("against CK-1")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"/trials/T1", "/trials/T1/traits/BLOOM", "/trials/new"})
  void a_cooperator_opens_no_page_of_the_trial_as_a_whole(String page) throws Exception {
    web.perform(get(page).with(Someone.cooperatorAt(ground.id("CH"))))
        .andExpect(status().isForbidden());
  }

  @Test
  void a_cooperator_sees_coded_plots_of_his_own_land_only() throws Exception {
    var cooperator = Someone.cooperatorAt(ground.id("CH"));
    web.perform(get("/trials").with(cooperator))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("T1 at Corrow Hill")))
        .andExpect(content().string(not(containsString("Home Block"))));
    web.perform(get("/trials/T1/sites/CH").with(cooperator))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("entry 1")))
        .andExpect(content().string(not(containsString("C18-03"))));
    web.perform(get("/trials/T1/sites/CH/sheet?trait=BLOOM").with(cooperator))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("C18-03"))));
    web.perform(get("/trials/T1/sites/HB").with(cooperator)).andExpect(status().isNotFound());
    web.perform(get("/trials/T1/sites/HB/sheet?trait=BLOOM").with(cooperator))
        .andExpect(status().isNotFound());
    web.perform(
            sheet("HB", "2025-10-20", UUID.randomUUID(), "9", "", "").with(cooperator).with(csrf()))
        .andExpect(status().isNotFound());
  }

  @Test
  void one_bad_value_on_a_sheet_keeps_the_good_ones() throws Exception {
    web.perform(
            sheet("HB", "2025-10-20", UUID.randomUUID(), "8,5", "many", "dead")
                .with(Someone.as(Role.BENCH))
                .with(csrf()))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Stored: 2 of 3 values.")))
        .andExpect(content().string(containsString("“many” is not a number like 8.5")))
        .andExpect(content().string(containsString("value=\"many\"")));
    assertThat(onDay(1)).isEqualTo("8.5");
    assertThat(onDay(2)).isEmpty();
    assertThat(onDay(3)).isEqualTo("DEAD");
  }

  @Test
  void a_sheet_sent_twice_is_stored_once() throws Exception {
    UUID key = UUID.randomUUID();
    for (int sent = 0; sent < 2; sent++) {
      web.perform(
              sheet("HB", "2025-10-20", key, "8.5", "", "")
                  .with(Someone.as(Role.BENCH))
                  .with(csrf()))
          .andExpect(status().isOk())
          .andExpect(content().string(not(containsString("on record for that day"))));
    }
    assertThat(observations.findByUnitIdOrderByOnDate(ground.plot("T1-HB-1-1"))).hasSize(3);
  }

  @Test
  void a_sheet_without_a_readable_day_keeps_what_was_typed() throws Exception {
    web.perform(
            sheet("HB", "5/6/2025", UUID.randomUUID(), "8.5", "", "")
                .with(Someone.as(Role.BENCH))
                .with(csrf()))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Type the day like 14 May 2026")))
        .andExpect(content().string(containsString("value=\"8.5\"")));
  }

  @Test
  void a_planned_trial_is_laid_out_at_every_site() throws Exception {
    plan("A18-01 c18-3", "HB 8 Apr 2027\nCH 2027-04-19").andExpect(redirectedUrl("/trials/T9"));
    assertThat(ground.plot("T9-CH-12")).isNotNull();
    ask(Role.BREEDER, "/trials/T9/sites/CH")
        .andExpect(content().string(containsString("T9-CH-12")));
    ask(Role.BREEDER, "/trials/T9")
        .andExpect(content().string(containsString("Nothing has been recorded")));
  }

  @Test
  void a_plan_that_cannot_be_read_says_so_beside_the_field() throws Exception {
    plan("A18-01 X99-1", "HB tomorrow or so")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Nobody knows X99-1.")))
        .andExpect(content().string(containsString("HB: type the day of planting")));
    assertThat(trials.findByCode("T9")).isEmpty();
  }

  @Test
  void an_event_is_taken_and_one_without_dates_refused() throws Exception {
    String bloom = ground.id("BLOOM").toString();
    event(bloom, "")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Say from when until when")));
    event(bloom, "2025-12-31").andExpect(redirectedUrl("/trials/T1/sites/HB"));
  }

  @Test
  void a_wrong_value_is_corrected_with_a_reason_and_both_are_kept() throws Exception {
    UUID wrong = valueOf("T1-HB-1-1", "2025-10-14");
    String page = "/trials/T1/sites/HB/values/" + wrong;
    ask(Role.BENCH, page).andExpect(content().string(containsString("BLOOM of T1-HB-1-1")));

    correct(page, "9.5", "", Someone.as(Role.BENCH))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Say why the earlier value is replaced.")));
    correct(page, "700", "misread", Someone.as(Role.BENCH))
        .andExpect(content().string(containsString("this says 700")));
    correct(page, "9.5", "read off the wrong row", Someone.as(Role.BENCH))
        .andExpect(redirectedUrl("/trials/T1/sites/HB/sheet?trait=BLOOM&on=2025-10-14"));
    observations.flush();

    ask(Role.BENCH, "/trials/T1/sites/HB/sheet?trait=BLOOM&on=2025-10-14")
        .andExpect(content().string(containsString("9.5")))
        .andExpect(content().string(containsString("in place of 8: read off the wrong row")));
    assertThat(observations.findById(wrong)).isPresent();
    correct(page, "9.6", "again", Someone.as(Role.BENCH)).andExpect(status().isNotFound());
  }

  @Test
  void a_cooperator_reports_an_event_on_his_own_land_only() throws Exception {
    var cooperator = Someone.cooperatorAt(ground.id("CH"));
    drift("HB").andExpect(status().isNotFound());
    drift("CH").andExpect(redirectedUrl("/trials/T1/sites/CH"));
    observations.flush();
    web.perform(get("/trials/T1/sites/CH").with(cooperator))
        .andExpect(content().string(containsString("drift from the neighbour")));
  }

  private ResultActions drift(String site) throws Exception {
    return web.perform(
        post("/trials/T1/sites/%s/events/new".formatted(site))
            .param("formKey", UUID.randomUUID().toString())
            .param("event", "DRIFT-" + site)
            .param("on", "2025-10-02")
            .param("kind", "HERBICIDE")
            .param("note", "drift from the neighbour")
            .with(Someone.cooperatorAt(ground.id("CH")))
            .with(csrf()));
  }

  @Test
  void a_cooperator_corrects_on_his_own_land_only() throws Exception {
    var cooperator = Someone.cooperatorAt(ground.id("CH"));
    UUID own = valueOf("T1-CH-1-1", "2024-10-14");
    UUID other = valueOf("T1-HB-1-1", "2024-10-14");
    correct("/trials/T1/sites/HB/values/" + other, "9", "no business of his", cooperator)
        .andExpect(status().isNotFound());
    correct("/trials/T1/sites/CH/values/" + other, "9", "no business of his", cooperator)
        .andExpect(status().isNotFound());
    correct("/trials/T1/sites/CH/values/" + own, "dead", "it was dead", cooperator)
        .andExpect(status().is3xxRedirection());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/",
        "/find?q=C18-03",
        "/accessions/C18-03",
        "/candidates",
        "/trials",
        "/trials/T1",
        "/trials/T1/traits/BLOOM",
        "/trials/T1/sites/HB",
        "/trials/T1/sites/HB/sheet?trait=BLOOM",
        "/trials/T1/sites/CH",
        "/trials/T1/sites/CH/sheet?trait=BLOOM&on=2024-10-14",
        "/export",
        "/export/observations",
        "/import",
        "/gates",
        "/containers",
        "/bench"
      })
  void no_page_tells_a_cooperator_of_other_land_or_of_names(String page) throws Exception {
    MockHttpServletResponse answer =
        web.perform(get(page).with(Someone.cooperatorAt(ground.id("CH"))))
            .andReturn()
            .getResponse();
    assertThat(answer.getStatus()).isLessThan(500);
    assertThat(answer.getContentAsString())
        .doesNotContain("Home Block", "T1-HB", "A18-01", "C18-03</", "CK-1");
  }

  private UUID valueOf(String plot, String on) {
    return observations.findByUnitIdOrderByOnDate(ground.plot(plot)).stream()
        .filter(one -> one.onDate().equals(LocalDate.parse(on)))
        .findFirst()
        .orElseThrow()
        .id();
  }

  private ResultActions correct(
      String page, String value, String reason, RequestPostProcessor somebody) throws Exception {
    return web.perform(
        post(page)
            .param("formKey", UUID.randomUUID().toString())
            .param("value", value)
            .param("reason", reason)
            .with(somebody)
            .with(csrf()));
  }

  private ResultActions event(String trait, String until) throws Exception {
    return web.perform(
        post("/trials/T1/sites/HB/events/new")
            .param("formKey", UUID.randomUUID().toString())
            .param("event", "FROST-HB-25")
            .param("on", "2025-10-02")
            .param("kind", "FROST")
            .param("note", "black frost")
            .param("traits", trait)
            .param("voidFrom", until.isEmpty() ? "" : "2025-10-02")
            .param("voidUntil", until)
            .param("plots", "t1-hb-1-2")
            .with(Someone.as(Role.BREEDER))
            .with(csrf()));
  }

  private ResultActions plan(String candidates, String sites) throws Exception {
    return web.perform(
        post("/trials/new")
            .param("formKey", UUID.randomUUID().toString())
            .param("crop", ground.crop().toString())
            .param("trial", "T9")
            .param("name", "Set 9")
            .param("candidates", candidates)
            .param("market", "CK-1")
            .param("sites", sites)
            .param("blocks", "4")
            .param("plantsPerPlot", "2")
            .param("seed", "20270408")
            .with(Someone.as(Role.BREEDER))
            .with(csrf()));
  }

  private MockHttpServletRequestBuilder sheet(String site, String on, UUID key, String... values) {
    MockHttpServletRequestBuilder sent =
        post("/trials/T1/sites/%s/sheet".formatted(site))
            .param("trait", "BLOOM")
            .param("formKey", key.toString())
            .param("on", on);
    for (int row = 0; row < values.length; row++) {
      sent.param(
          "rows[%d].plot".formatted(row),
          ground.plot("T1-%s-1-%d".formatted(site, row + 1)).toString());
      sent.param("rows[%d].values[0]".formatted(row), values[row]);
    }
    return sent;
  }

  private ResultActions ask(Role role, String page) throws Exception {
    return web.perform(get(page).with(Someone.as(role))).andExpect(status().isOk());
  }

  private String onDay(int entry) {
    return observations.findByUnitIdOrderByOnDate(ground.plot("T1-HB-1-" + entry)).stream()
        .filter(one -> one.onDate().equals(LocalDate.of(2025, 10, 20)))
        .map(
            one ->
                one.reading().number() == null
                    ? one.reading().noneBecause().name()
                    : one.reading().number().toPlainString())
        .findFirst()
        .orElse("");
  }
}
