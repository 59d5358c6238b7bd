package trialwood.propagation.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.flash;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Role;
import trialwood.propagation.Bench;
import trialwood.propagation.Closing;
import trialwood.propagation.FinalCount;
import trialwood.propagation.FinalCounts;
import trialwood.propagation.NewLook;
import trialwood.propagation.NewWeaning;
import trialwood.propagation.StickingRun;
import trialwood.propagation.TakenOuts;
import trialwood.propagation.Tray;
import trialwood.propagation.TrayLooks;
import trialwood.propagation.TrayRecords;
import trialwood.propagation.Treatment;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

@ApplicationTest
@Import(Bench.class)
@Transactional
class TrayPagesTest {

  private static final String PAGE = "/bench/trays/22-A18-04-3";

  @Autowired MockMvc web;
  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired Closing closing;
  @Autowired TrayLooks looks;
  @Autowired FinalCounts counts;
  @Autowired TakenOuts takenOuts;

  private UUID tray;

  @BeforeEach
  void a_tray_of_24() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    tray = bench.tray(run, "22-A18-04-3", bench.accession("A18-04"), 24).unitId();
    bench.flush();
  }

  private ResultActions open(String address) throws Exception {
    return web.perform(get(address).with(Someone.as(Role.BENCH)));
  }

  private ResultActions send(String address, Map<String, String> typed) throws Exception {
    MockHttpServletRequestBuilder form = post(address).with(Someone.as(Role.BENCH)).with(csrf());
    typed.forEach(form::param);
    if (!typed.containsKey("formKey")) {
      form.param("formKey", UUID.randomUUID().toString());
    }
    return web.perform(form);
  }

  private static ResultActions shows(ResultActions page, String... words) throws Exception {
    page.andExpect(status().isOk());
    for (String word : words) {
      page.andExpect(content().string(containsString(word)));
    }
    return page;
  }

  private static Map<String, String> count(String rooted, String alive, String dead) {
    Map<String, String> typed = new HashMap<>();
    typed.put("on", "4 Jul 2022");
    typed.put("rooted", rooted);
    typed.put("aliveWithoutRoots", alive);
    typed.put("dead", dead);
    typed.put("takenOut", "0");
    return typed;
  }

  private static Map<String, String> look(String lifted, String rooted, String alive) {
    Map<String, String> typed = new HashMap<>();
    typed.put("on", "24 Jun 2022");
    typed.put("lifted", lifted);
    typed.put("rooted", rooted);
    typed.put("alive", alive);
    typed.put("deadRemoved", "0");
    typed.put("asked", "Nobody looked for 18 days. Was a look taken and not written down?");
    typed.put("checked", "the pump was down that week");
    return typed;
  }

  @ParameterizedTest
  @ValueSource(strings = {"look", "final-count", "taken-out", "weaning", "ruling"})
  void every_form_opens(String form) throws Exception {
    shows(open(PAGE + "/" + form), "name=\"formKey\"", "A18-04");
  }

  @Test
  void a_tray_that_is_not_there_is_not_found() throws Exception {
    open("/bench/trays/99-NONE-1/look").andExpect(status().isNotFound());
    open(PAGE + "/look?corrects=" + UUID.randomUUID()).andExpect(status().isNotFound());
  }

  @Test
  void a_final_count_that_balances_closes_the_tray() throws Exception {
    send(PAGE + "/final-count", count("9", "4", "11")).andExpect(redirectedUrl(PAGE));

    assertThat(counts.standing(tray)).singleElement().extracting(FinalCount::rooted).isEqualTo(9);
  }

  @Test
  void one_too_many_is_refused_with_both_numbers_and_what_was_typed_stays() throws Exception {
    shows(
        send(PAGE + "/final-count", count("9", "4", "12")),
        "25 recorded, 24 stuck",
        "value=\"12\"");
    assertThat(counts.standing(tray)).isEmpty();
  }

  @Test
  void one_too_few_is_refused_and_asked_after() throws Exception {
    shows(
        send(PAGE + "/final-count", count("9", "4", "10")),
        "23 recorded, 24 stuck. 1 lost or destroyed? Say which");
  }

  @Test
  void more_rooted_than_stuck_is_refused_with_both_numbers() throws Exception {
    shows(send(PAGE + "/final-count", count("26", "0", "0")), "26 rooted, 24 stuck");
  }

  @ParameterizedTest
  @ValueSource(strings = {"-", "n/a", "20%", "1,5", "circa 30", "-1", "NaN", "1e1"})
  void what_is_no_count_is_refused_with_an_example_and_never_taken_for_zero(String typed)
      throws Exception {
    shows(
        send(PAGE + "/final-count", count(typed, "24", "0")),
        "“" + typed + "” is not a count. Type digits, like 24.",
        "value=\"" + typed + "\"");
    assertThat(counts.standing(tray)).isEmpty();
  }

  @Test
  void six_rooted_of_five_lifted_is_refused_beside_the_field() throws Exception {
    shows(send(PAGE + "/look", look("5", "6", "24")), "6 rooted, but 5 lifted", "href=\"#rooted\"");
  }

  @Test
  void a_look_sent_twice_is_stored_once() throws Exception {
    Map<String, String> typed = look("5", "4", "24");
    typed.put("formKey", UUID.randomUUID().toString());
    for (int sending = 0; sending < 2; sending++) {
      send(PAGE + "/look", typed).andExpect(redirectedUrl(PAGE));
    }

    assertThat(looks.standing(tray)).hasSize(1);
    shows(open(PAGE), "4 of 5");
  }

  @Test
  void a_look_is_corrected_with_a_reason_and_both_are_shown() throws Exception {
    UUID earlier =
        records.look(tray, new NewLook(Bench.STUCK.plusDays(18), 5, 4, 12, 0, null), null).id();
    bench.flush();
    shows(open(PAGE), "corrects=" + earlier);
    shows(open(PAGE + "/look?corrects=" + earlier), "value=\"12\"", "supersedeReason");

    Map<String, String> typed = look("5", "4", "21");
    typed.put("corrects", earlier.toString());
    typed.put("supersedeReason", "");
    shows(send(PAGE + "/look", typed), "Say why the record is replaced.");

    typed.put("supersedeReason", "12 was the tray beside it");
    send(PAGE + "/look", typed).andExpect(redirectedUrl(PAGE));
    shows(open(PAGE), "replaced", "12 was the tray beside it");
    assertThat(looks.standing(tray))
        .singleElement()
        .satisfies(it -> assertThat(it.alive()).isEqualTo(21));
  }

  @Test
  void a_closed_tray_says_who_closed_it_when_and_with_what() throws Exception {
    closing.finalCount(tray, Bench.closing(Bench.COUNTED, 21), null);
    bench.flush();

    shows(
        open(PAGE + "/final-count"),
        "This tray is closed",
        "4\u00a0Jul\u00a02022",
        "21 rooted",
        "3 dead",
        "Save in its place");

    Map<String, String> again = count("20", "0", "4");
    again.put("settles", "");
    shows(send(PAGE + "/final-count", again), "Say why the earlier count is replaced.");
    again.put("settles", "counted again");
    send(PAGE + "/final-count", again).andExpect(redirectedUrl(PAGE));
    assertThat(counts.standing(tray)).singleElement().extracting(FinalCount::rooted).isEqualTo(20);
  }

  @Test
  void two_phones_with_21_and_22_are_both_kept_and_a_person_decides() throws Exception {
    shows(open(PAGE + "/final-count"))
        .andExpect(content().string(not(containsString("name=\"settles\""))));
    send(PAGE + "/final-count", count("21", "0", "3")).andExpect(redirectedUrl(PAGE));
    send(PAGE + "/final-count", count("22", "0", "2")).andExpect(redirectedUrl(PAGE));

    assertThat(counts.standing(tray)).hasSize(2);
    shows(open(PAGE), "neither is used", "Two final counts: 21 and 22 rooted.");
    shows(open(PAGE + "/final-count"), "21 rooted", "22 rooted", "Neither is used");
  }

  @Test
  void a_percentage_appears_once_the_count_is_saved() throws Exception {
    shows(open("/bench/runs/R22")).andExpect(content().string(not(containsString("37.5"))));

    send(PAGE + "/final-count", count("9", "4", "11")).andExpect(redirectedUrl(PAGE));
    bench.flush();

    shows(open("/bench/runs/R22"), "9 of 24", "37.5\u00a0%");
  }

  @Test
  void one_of_five_on_day_14_and_four_on_day_18_is_rooted_between_the_two() throws Exception {
    records.look(tray, new NewLook(Bench.STUCK.plusDays(14), 5, 1, 24, 0, null), null);
    Map<String, String> typed = look("5", "4", "24");
    send(PAGE + "/look", typed).andExpect(redirectedUrl(PAGE));
    closing.finalCount(tray, Bench.closing(Bench.COUNTED, 22), null);
    bench.flush();

    shows(open("/bench/runs/R22"), "14–18");
  }

  @Test
  void who_suffers_off_the_mist_is_seen_apart_from_who_rooted() throws Exception {
    StickingRun run = bench.run("R21", Bench.STUCK.minusYears(1), bench.accession("CK-C"));
    int[] alive = {17, 16, 16};
    List<Tray> trays = bench.counted(run, "B18-01", bench.accession("B18-01"), 20, 20, 20);
    for (int at = 0; at < alive.length; at++) {
      LocalDate mist = Bench.COUNTED.minusYears(1);
      closing.weaning(
          trays.get(at).unitId(),
          new NewWeaning(mist, mist.plusDays(14), alive[at], null, null, null),
          null);
    }
    bench.flush();

    shows(open("/bench/runs/R21"), "60 of 72", "83.3\u00a0%", "49 of 60", "81.7\u00a0%");
  }

  /** The numbers are worked by hand in RunTreatmentsTest. */
  @Test
  void a_run_compares_the_treatments_of_one_clone() throws Exception {
    StickingRun run = bench.run("R23", Bench.STUCK.minusYears(1), bench.accession("CK-D"));
    UUID clone = bench.accession("A18-07");
    bench.treated(run, "B-1", clone, null, 12, 7, 16);
    open("/bench/runs/R23")
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("Treatments compared"))));

    bench.treated(run, "B-2", clone, new Treatment(null, null, null, 8000), 20, 23, 16);

    open("/bench/runs/R23")
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("Treatments compared")))
        .andExpect(content().string(containsString("K-IBA, 8000 ppm, quick dip")))
        .andExpect(content().string(containsString("F = 5.30 on 1 and 4 df, p value 0.08")))
        .andExpect(content().string(containsString("22–76 %")))
        .andExpect(content().string(containsString("Quasi-binomial logit")));

    bench.treated(run, "B-3", clone, new Treatment("split", null, null, null), 0, 0);
    open("/bench/runs/R23")
        .andExpect(
            content()
                .string(
                    containsString(
                        "No comparison: All or nothing rooted in K-IBA, 2000 ppm, quick dip, wounded: split")));
  }

  @Test
  void two_final_counts_say_at_once_that_they_contradict_each_other() throws Exception {
    send(PAGE + "/final-count", count("21", "0", "3")).andExpect(redirectedUrl(PAGE));
    send(PAGE + "/final-count", count("22", "0", "2"))
        .andExpect(flash().attribute("status", containsString("It contradicts another count")));
    shows(open(PAGE), "href=\"/doubts/");
  }

  @Test
  void a_count_of_a_fourth_day_is_asked_about_and_kept_with_its_reason() throws Exception {
    Map<String, String> typed = count("20", "0", "4");
    typed.put("on", "10 Jun 2022");
    shows(
        send(PAGE + "/final-count", typed),
        "Is this right?",
        "Day 4 after sticking is early for a final count.",
        "name=\"checked\"");
    assertThat(counts.standing(tray)).isEmpty();

    typed.put("asked", "Day 4 after sticking is early for a final count. Is it one?");
    typed.put("checked", "the bench was cleared for a repair");
    send(PAGE + "/final-count", typed).andExpect(redirectedUrl(PAGE));
    shows(open(PAGE), "Day 4 after sticking", "the bench was cleared for a repair");
  }

  @Test
  void what_was_taken_out_is_corrected_with_a_reason_and_both_are_shown() throws Exception {
    Map<String, String> typed = new HashMap<>();
    typed.put("on", "24 Jun 2022");
    typed.put("number", "2");
    typed.put("rooted", "yes");
    typed.put("fate", "GIVEN_AWAY");
    send(PAGE + "/taken-out", typed).andExpect(redirectedUrl(PAGE));
    shows(open(PAGE), "2 rooted, given away", "is the transfer on record?");
    UUID earlier = takenOuts.standing(tray).get(0).id();
    shows(open(PAGE + "/taken-out?corrects=" + earlier), "value=\"2\"", "supersedeReason");

    typed.put("number", "1");
    typed.put("corrects", earlier.toString());
    typed.put("supersedeReason", "one came back");
    send(PAGE + "/taken-out", typed).andExpect(redirectedUrl(PAGE));

    assertThat(takenOuts.soFar(tray).number()).isOne();
    shows(open(PAGE), "replaced", "one came back");
  }

  @Test
  void on_a_round_the_next_tray_follows_and_whoever_looked_is_remembered() throws Exception {
    LocalDate stuck = LocalDate.now().minusDays(7);
    StickingRun run = bench.run("R-NOW", stuck, bench.accession("CK-E"));
    UUID clone = bench.accession("A19-01");
    bench.tray(run, "N-1", clone, 24);
    bench.tray(run, "N-2", clone, 24);
    bench.flush();
    shows(open("/bench/round?run=R-NOW"), "Go to N-1", "2 waiting", "Look, day 7");
    shows(open("/bench/trays/N-1/look?round=on&run=R-NOW"), "1 of 2", "Skip to N-2");

    Map<String, String> typed = look("5", "0", "24");
    typed.put("on", LocalDate.now().toString());
    typed.put("round", "on");
    typed.put("run", "R-NOW");
    send("/bench/trays/N-1/look", typed)
        .andExpect(redirectedUrl("/bench/trays/N-2/look?round=on&run=R-NOW"));
    bench.flush();
    send("/bench/trays/N-2/look", typed).andExpect(redirectedUrl("/bench/round?run=R-NOW"));
    bench.flush();

    shows(open("/bench/round?run=R-NOW"), "done today", "0 waiting");
    open("/bench/round?run=R-NOW").andExpect(content().string(not(containsString("· </span>"))));
  }
}
