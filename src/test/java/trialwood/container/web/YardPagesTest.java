package trialwood.container.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.bean.override.mockito.MockitoSpyBean;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.transaction.annotation.Transactional;
import trialwood.container.LotCounts;
import trialwood.container.LotLosses;
import trialwood.container.LotRecords;
import trialwood.container.Lots;
import trialwood.container.NewCount;
import trialwood.container.NewLoss;
import trialwood.container.Nursery;
import trialwood.container.PlantPlaces;
import trialwood.lineage.CheckRole;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;
import trialwood.unit.Units;

@ApplicationTest
@Import(Nursery.class)
@Transactional
class YardPagesTest {

  private static final LocalDate AUTUMN = Nursery.AUTUMN;

  @Autowired MockMvc web;
  @Autowired Nursery nursery;
  @Autowired LotRecords records;
  @Autowired Lots lots;
  @Autowired LotCounts counts;
  @Autowired LotLosses losses;
  @Autowired Units units;
  @Autowired PlantPlaces places;
  @Autowired Observations observations;
  @MockitoSpyBean JdbcClient jdbc;

  private UUID lot;
  private List<UUID> plants;

  @BeforeEach
  void twenty_pots_of_which_three_are_numbered() {
    lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    plants = nursery.numbered(lot, "22-C18-03-G1", 3);
    nursery.measured(plants, nursery.height(), LocalDate.of(2022, 9, 1), 61, 58, 66);
  }

  private ResultActions open(String address, Object... values) throws Exception {
    return web.perform(get(address, values).with(Someone.as(Role.BENCH)));
  }

  private ResultActions send(String address, Map<String, String> typed) throws Exception {
    MockHttpServletRequestBuilder form = post(address).with(Someone.as(Role.BENCH)).with(csrf());
    form.param("formKey", typed.getOrDefault("formKey", UUID.randomUUID().toString()));
    typed.forEach(
        (box, text) -> {
          if (!box.equals("formKey")) {
            form.param(box, text);
          }
        });
    return web.perform(form);
  }

  private static ResultActions shows(ResultActions page, String... words) throws Exception {
    page.andExpect(status().isOk());
    for (String word : words) {
      page.andExpect(content().string(containsString(word)));
    }
    return page;
  }

  @Test
  void the_list_finds_lots_by_text_class_and_season() throws Exception {
    nursery.lot("22-C18-04-G1", "C18-04", 12);

    shows(open("/containers"), "22-C18-03-G1", "22-C18-04-G1", "20 of 20");
    shows(
            open("/containers?q=c18-04&class={class}&season=2022&sort=-alive", "#1"),
            "22-C18-04-G1",
            "1–1 of 1")
        .andExpect(content().string(not(containsString("22-C18-03-G1"))))
        .andExpect(content().string(not(containsString("No lot is like that."))));
    shows(open("/containers?season=1999"), "No lot is like that.");
    shows(open("/containers?season=x&class=none&sort=drop&page=-1"), "No lot is like that.");
  }

  private int statements(String address) throws Exception {
    Mockito.clearInvocations(jdbc);
    shows(open(address));
    return Mockito.mockingDetails(jdbc).getInvocations().size();
  }

  @Test
  void a_page_costs_as_many_statements_for_many_lots_and_plants_as_for_few() throws Exception {
    int list = statements("/containers");
    int book = statements("/containers/22-C18-03-G1");
    for (int n = 10; n < 20; n++) {
      nursery.lot("22-D18-%d-G1".formatted(n), "D18-" + n, 20);
    }
    send("/containers/22-C18-03-G1/plants", Map.of("number", "17", "from", "20 Jul 2022"));
    nursery.measured(plants, nursery.height(), LocalDate.of(2022, 9, 29), 69, 62, 78);

    assertThat(statements("/containers")).isEqualTo(list).isPositive();
    assertThat(statements("/containers/22-C18-03-G1")).isEqualTo(book).isPositive();
  }

  @Test
  void the_file_holds_the_rows_that_were_shown() throws Exception {
    nursery.lot("22-C18-04-G1", "C18-04", 12);

    open("/containers.csv?q=C18-04")
        .andExpect(status().isOk())
        .andExpect(
            content()
                .string(
                    "\ufefflot,accession,class,litres,potted_on,potted,alive,counted_on,found,saleable,yard\r\n"
                        + "22-C18-04-G1,C18-04,\"#1\",2.800,2022-07-20,12,12,,,,bed 1\r\n"));
  }

  @Test
  void a_lots_page_shows_a_ledger_that_closes_and_the_check_beside_it() throws Exception {
    nursery.check("CK-1", CheckRole.MARKET);
    UUID check = nursery.lot("22-CK-1-G1", "CK-1", 10);
    List<UUID> checks = nursery.numbered(check, "22-CK-1-G1", 3);
    nursery.measured(checks, nursery.height(), LocalDate.of(2022, 9, 1), 50, 52, 54);
    records.count(check, new NewCount(AUTUMN, 10, 9, null, null));
    records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), 1, "wilted, roots brown", null));
    records.count(lot, new NewCount(AUTUMN, 19, 16, null, null));

    shows(
        open("/containers/22-c18-3-g1"),
        "19 of 20",
        "wilted, roots brown",
        "16 saleable",
        "22-CK-1-G1",
        "market check",
        "10 of 10 alive",
        "61.7\u00a0cm",
        "52.0\u00a0cm",
        "<svg class=\"interval\"");
  }

  /** By hand: 8, 4 and 12 cm in four weeks are 2 cm a week. */
  @Test
  void plants_that_were_measured_again_show_their_growth_beside_the_check() throws Exception {
    nursery.check("CK-1", CheckRole.MARKET);
    UUID check = nursery.lot("22-CK-1-G1", "CK-1", 10);
    List<UUID> checks = nursery.numbered(check, "22-CK-1-G1", 2);
    open("/containers/22-C18-03-G1")
        .andExpect(content().string(not(containsString("Gain a week"))));
    nursery.measured(plants, nursery.height(), LocalDate.of(2022, 9, 29), 69, 62, 78);

    shows(
        open("/containers/22-C18-03-G1"),
        "+2.00\u00a0cm",
        "−0.48 to 4.48\u00a0cm",
        "11.5\u00a0%",
        "1–29\u00a0Sep\u00a02022",
        "No plant of a check beside it was measured twice.");

    nursery.measured(checks, nursery.height(), LocalDate.of(2022, 9, 1), 50, 52);
    nursery.measured(checks, nursery.height(), LocalDate.of(2022, 9, 29), 54, 60);
    shows(open("/containers/22-C18-03-G1"), "+1.50\u00a0cm")
        .andExpect(content().string(not(containsString("was measured twice"))));
  }

  @Test
  void a_shifted_plant_brings_its_first_measuring_along() throws Exception {
    send(
        "/containers/22-C18-03-G1/shift",
        Map.of(
            "lot", "23-C18-03-G3",
            "containerClass", nursery.largePots().toString(),
            "on", "28 Mar 2023",
            "number", "12",
            "plants", plants.get(1).toString()));
    nursery.measured(plants.subList(1, 2), nursery.height(), LocalDate.of(2023, 8, 31), 110);

    shows(
        open("/containers/23-C18-03-G3"),
        "+1.00\u00a0cm",
        "An interval of the mean needs at least two plants.");
    open("/containers/22-C18-03-G1")
        .andExpect(content().string(not(containsString("Gain a week"))));
  }

  @Test
  void records_that_contradict_each_other_stand_on_top_of_the_page() throws Exception {
    records.count(lot, new NewCount(AUTUMN, 17, null, null, null));

    shows(open("/containers/22-C18-03-G1"), "contradict", "the records leave 20 of 20 potted");
  }

  @Test
  void a_lot_that_is_not_there_is_not_found() throws Exception {
    open("/containers/99-NONE-G1").andExpect(status().isNotFound());
    open("/containers/99-NONE-G1/count").andExpect(status().isNotFound());
  }

  @Test
  void every_form_opens() throws Exception {
    for (String page :
        List.of("count", "grade", "cut", "winter", "out", "shift", "plants", "measure")) {
      shows(open("/containers/22-C18-03-G1/" + page), "name=\"formKey\"");
    }
    shows(open("/containers/pot"), "name=\"formKey\"");
  }

  @Test
  void a_lot_is_potted_out_of_trays() throws Exception {
    Map<String, String> typed =
        Map.of(
            "lot", "22-C18-04-G1",
            "accession", "c18-4",
            "containerClass", nursery.smallPots().toString(),
            "litres", "2,8",
            "on", "20 Jul 2022",
            "number", "20",
            "sources[0].label", "22-C18-03-G1",
            "sources[0].number", "x");
    nursery.accession("C18-04");

    shows(send("/containers/pot", typed), "How many came from it?", "value=\"2,8\"", "c18-4");
    assertThat(units.labelled("22-C18-04-G1")).isEmpty();

    Map<String, String> bought = new HashMap<>(typed);
    bought.keySet().removeIf(box -> box.startsWith("sources"));
    send("/containers/pot", bought).andExpect(redirectedUrl("/containers/22-C18-04-G1"));
    assertThat(units.labelled("22-C18-04-G1")).isPresent();
  }

  @Test
  void a_code_nobody_knows_is_said_beside_its_box() throws Exception {
    shows(
        send("/containers/pot", Map.of("lot", "L9", "accession", "Z99", "number", "twenty")),
        "No accession has this code.",
        "Choose the class of pots.",
        "Write how many were potted",
        "value=\"twenty\"");
  }

  @Test
  void an_impossible_count_is_refused_and_what_was_typed_stays() throws Exception {
    shows(
        send(
            "/containers/22-C18-03-G1/count",
            Map.of("alive", "17", "saleable", "18", "on", "12 Oct 2022", "note", "wet")),
        "18 saleable, 17 alive.",
        "value=\"18\"",
        "wet");
    assertThat(counts.findByLotIdOrderByOnDate(lot)).isEmpty();
  }

  @Test
  void a_count_sent_twice_is_stored_once() throws Exception {
    Map<String, String> typed =
        Map.of(
            "formKey", UUID.randomUUID().toString(),
            "alive", "19",
            "rows[0].number", "1",
            "rows[0].reason", "roots brown",
            "on", "12 Oct 2022");

    for (int sending = 0; sending < 2; sending++) {
      send("/containers/22-C18-03-G1/count", typed)
          .andExpect(redirectedUrl("/containers/22-C18-03-G1"));
    }

    assertThat(counts.findByLotIdOrderByOnDate(lot)).hasSize(1);
    assertThat(lots.ledger(lot, AUTUMN).lost()).isEqualTo(1);
  }

  @Test
  void a_count_that_does_not_close_is_asked_about_and_kept_with_the_answer() throws Exception {
    Map<String, String> typed = new HashMap<>(Map.of("alive", "18", "on", "12 Oct 2022"));
    typed.put("rows[0].number", "1");
    shows(send("/containers/22-C18-03-G1/count", typed), "Say what they died of");
    typed.put("rows[0].reason", "roots brown");
    shows(
        send("/containers/22-C18-03-G1/count", typed),
        "18 alive, but the records leave 19",
        "Yes, I checked, because");
    assertThat(counts.findByLotIdOrderByOnDate(lot)).isEmpty();
    typed.put(
        "asked",
        "18 alive, but the records leave 19 of 20 potted (1 lost, 0 disposed of, 0 given away, 0 shifted).");
    typed.put("checked", "one pot was empty from the start");
    send("/containers/22-C18-03-G1/count", typed)
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    assertThat(lots.ledger(lot, AUTUMN).lost()).isEqualTo(1);
    shows(open("/containers/22-C18-03-G1"), "roots brown");
  }

  @Test
  void a_lot_is_pinched_covered_and_graded_and_its_page_tells() throws Exception {
    send(
            "/containers/22-C18-03-G1/cut",
            Map.of("kind", "PINCHED", "cutToCm", "15", "on", "3 Aug 2022"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));
    shows(
        send("/containers/22-C18-03-G1/cut", Map.of("kind", "PRUNED", "on", "20 Aug 2022")),
        "After 15 August");
    send(
            "/containers/22-C18-03-G1/winter",
            Map.of("kind", "COVERED", "house", "house 2", "on", "28 Nov 2022"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));
    send(
            "/containers/22-C18-03-G1/grade",
            Map.of("a", "17", "b", "2", "c", "1", "rootBall", "4", "on", "12 Oct 2022"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    shows(
        open("/containers/22-C18-03-G1"),
        "cut to 15 cm",
        "house 2",
        "17 A, 2 B, 1 C",
        "root ball 4: holds all round, white tips");
  }

  @Test
  void a_pasted_block_is_shown_in_the_boxes_and_nothing_is_stored() throws Exception {
    Map<String, String> typed =
        Map.of(
            "traits", "HEIGHT",
            "on", "12 Oct 2022",
            "block", "plant\tHEIGHT\n2\t64,5\n3\tsixty\n9\t61\n");

    shows(
        send("/containers/22-C18-03-G1/measure/paste", typed),
        "Nothing is stored yet.",
        "value=\"64,5\"",
        "“sixty” is no number",
        "No plant here for “9 61”.");
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(1))).hasSize(1);
  }

  @Test
  void a_count_is_corrected_with_a_reason_and_both_are_shown() throws Exception {
    records.count(lot, new NewCount(AUTUMN, 12, null, null, null));
    UUID earlier = counts.findByLotIdOrderByOnDate(lot).get(0).id();
    String page = "/containers/22-C18-03-G1/counts/" + earlier;
    shows(open("/containers/22-C18-03-G1"), page);
    shows(open(page), "12 alive on 12\u00a0Oct\u00a02022", "value=\"12\"");

    Map<String, String> typed = new HashMap<>(Map.of("alive", "20", "on", "12 Oct 2022"));
    shows(send(page, typed), "Say why the earlier record is replaced.", "value=\"20\"");
    typed.put("supersedeReason", "the second bed was left out");
    send(page, typed).andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    shows(open("/containers/22-C18-03-G1"), "replaced later", "the second bed was left out");
    shows(send(page, typed), "This record was replaced before.");
  }

  @Test
  void a_loss_is_corrected_and_counts_once() throws Exception {
    records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), 3, "roots brown", null));
    UUID earlier = losses.findByLotIdOrderByOnDate(lot).get(0).id();
    String page = "/containers/22-C18-03-G1/losses/" + earlier;
    shows(open(page), "3 lost on 21\u00a0Sep\u00a02022: roots brown");

    send(
            page,
            Map.of(
                "number", "1",
                "reason", "roots brown",
                "on", "21 Sep 2022",
                "supersedeReason", "two were only dry"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    assertThat(lots.ledger(lot, AUTUMN).lost()).isEqualTo(1);
    shows(open("/containers/22-C18-03-G1"), "two were only dry", "replaced later");
  }

  @Test
  void a_pinch_and_a_grading_are_corrected_with_a_reason_and_both_are_shown() throws Exception {
    send("/containers/22-C18-03-G1/cut", Map.of("kind", "PINCHED", "on", "2022-08-03"));
    send(
        "/containers/22-C18-03-G1/grade",
        Map.of("a", "17", "b", "2", "c", "1", "on", AUTUMN.toString()));
    UUID pinch = happened("lot_care");
    UUID grading = happened("lot_grade");

    shows(open("/containers/22-C18-03-G1/cut/{id}", pinch), "On record", "2022-08-03");
    shows(open("/containers/22-C18-03-G1/grade/{id}", grading), "17 A, 2 B, 1 C");
    open("/containers/22-C18-03-G1/winter/{id}", pinch).andExpect(status().isNotFound());
    shows(
        send("/containers/22-C18-03-G1/cut/" + pinch, Map.of("kind", "PRUNED", "on", "2022-08-04")),
        "Say why the earlier record is replaced.");
    send(
            "/containers/22-C18-03-G1/cut/" + pinch,
            Map.of("kind", "PRUNED", "on", "2022-08-04", "supersedeReason", "it was a pruning"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));
    send(
            "/containers/22-C18-03-G1/grade/" + grading,
            Map.of(
                "a", "16", "b", "3", "c", "1", "on", AUTUMN.toString(), "supersedeReason", "two"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    shows(
        open("/containers/22-C18-03-G1"),
        "replaced later",
        "replaces an earlier record: it was a pruning",
        "16 A, 3 B, 1 C");
  }

  private UUID happened(String table) {
    return jdbc.sql("select id from " + table).query(UUID.class).single();
  }

  @Test
  void a_record_of_another_lot_is_not_corrected_here() throws Exception {
    nursery.lot("22-C18-04-G1", "C18-04", 12);
    records.count(lot, new NewCount(AUTUMN, 12, null, null, null));
    UUID earlier = counts.findByLotIdOrderByOnDate(lot).get(0).id();

    open("/containers/22-C18-04-G1/counts/" + earlier).andExpect(status().isNotFound());
    open("/containers/22-C18-04-G1/losses/" + earlier).andExpect(status().isNotFound());
  }

  @Test
  void a_measured_value_is_corrected_and_both_are_shown() throws Exception {
    UUID earlier = observations.findByUnitIdOrderByOnDate(plants.get(0)).get(0).id();
    String plant = "/containers/22-C18-03-G1/plants/22-C18-03-G1-01";
    String page = plant + "/values/" + earlier;
    shows(open("/containers/22-C18-03-G1"), plant);
    shows(open(plant), "61\u00a0cm", page);
    shows(open(page), "On record for 1\u00a0Sep\u00a02022");

    shows(
        send(page, Map.of("value", "sixty")),
        "“sixty” is no number",
        "Say why the value is replaced");
    shows(
        send(page, Map.of("value", "6100", "supersedeReason", "a slip")), "runs from 0 to 600 cm");
    send(page, Map.of("value", "64", "supersedeReason", "read off the neighbour"))
        .andExpect(redirectedUrl(plant));

    shows(open(plant), "61\u00a0cm", "64\u00a0cm", "read off the neighbour", "replaced");
    shows(
        send(page, Map.of("value", "65", "supersedeReason", "again")),
        "This value was replaced before.");
    open("/containers/22-C18-03-G1/plants/22-C18-03-G1-02/values/" + earlier)
        .andExpect(status().isNotFound());
  }

  @Test
  void plants_that_went_to_somebody_say_to_whom() throws Exception {
    Map<String, String> typed = Map.of("way", "TRANSFERRED", "number", "3", "on", "12 Oct 2022");

    shows(send("/containers/22-C18-03-G1/out", typed), "Say who has the plants now");
    assertThat(lots.ledger(lot, AUTUMN).transferred()).isZero();
  }

  @Test
  void a_shift_takes_numbered_plants_along() throws Exception {
    Map<String, String> typed =
        Map.of(
            "lot", "23-C18-03-G3",
            "containerClass", nursery.largePots().toString(),
            "on", "28 Mar 2023",
            "number", "12",
            "plants", plants.get(1).toString());

    send("/containers/22-C18-03-G1/shift", typed)
        .andExpect(redirectedUrl("/containers/23-C18-03-G3"));

    UUID larger = units.labelled("23-C18-03-G3").orElseThrow().id();
    assertThat(places.standing(larger, LocalDate.of(2023, 3, 28))).containsExactly(plants.get(1));
    shows(open("/containers/23-C18-03-G3"), "12 from", "22-C18-03-G1-02");
  }

  @Test
  void more_to_shift_than_there_are_is_said_beside_the_box() throws Exception {
    Map<String, String> typed =
        Map.of(
            "lot", "23-C18-03-G3",
            "containerClass", nursery.largePots().toString(),
            "on", "28 Mar 2023",
            "number", "21");

    shows(send("/containers/22-C18-03-G1/shift", typed), "21 to shift, 20 in the lot.");
    assertThat(units.labelled("23-C18-03-G3")).isEmpty();
  }

  @Test
  void further_plants_are_numbered_on() throws Exception {
    send("/containers/22-C18-03-G1/plants", Map.of("number", "2", "from", "12 Oct 2022"))
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));

    assertThat(units.labelled("22-C18-03-G1-05")).isPresent();
  }

  private Map<String, String> sheet(String... cells) {
    Map<String, String> typed = new LinkedHashMap<>();
    typed.put("on", "12 Oct 2022");
    typed.put("traits", "HEIGHT");
    for (int row = 0; row < cells.length; row++) {
      typed.put("lines[%d].plant".formatted(row), plants.get(row).toString());
      typed.put("lines[%d].cells[0]".formatted(row), cells[row]);
    }
    return typed;
  }

  @Test
  void a_measuring_sheet_stores_its_good_lines_and_brings_back_the_others() throws Exception {
    shows(
            send("/containers/22-C18-03-G1/measure", sheet("62,5", "sixty", "dead")),
            "2 plants stored.",
            "“sixty” is no number",
            "value=\"sixty\"")
        .andExpect(content().string(not(containsString("value=\"62,5\""))));

    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0)))
        .last()
        .satisfies(seen -> assertThat(seen.reading().number()).isEqualByComparingTo("62.5"));
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(1))).hasSize(1);
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(2))).hasSize(2);
  }

  @Test
  void inches_are_asked_about_and_stored_once_somebody_looked_again() throws Exception {
    shows(
        send("/containers/22-C18-03-G1/measure", sheet("24")),
        "24 in = 61 cm?",
        "I checked",
        "value=\"24\"");
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0))).hasSize(1);

    Map<String, String> again = sheet("24");
    again.put("lines[0].checked", "true");
    shows(send("/containers/22-C18-03-G1/measure", again), "what you found on this plant");

    again.put("lines[0].found", "broken by wind");
    send("/containers/22-C18-03-G1/measure", again)
        .andExpect(redirectedUrl("/containers/22-C18-03-G1"));
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0)))
        .last()
        .extracting(Observation::note)
        .isEqualTo("broken by wind");
  }

  @Test
  void a_form_that_was_tampered_with_is_a_bad_request() throws Exception {
    send("/containers/22-C18-03-G1/count", Map.of("alive", "19", "by", "nobody"))
        .andExpect(status().isBadRequest());
    send("/containers/22-C18-03-G1/out", Map.of("number", "-3", "way", "SOLD"))
        .andExpect(status().isBadRequest());
  }

  @Test
  void a_cooperator_sees_no_lots_and_a_reader_writes_none() throws Exception {
    web.perform(get("/containers").with(Someone.as(Role.COOPERATOR)))
        .andExpect(status().isForbidden());
    web.perform(get("/containers/pot").with(Someone.as(Role.READER)))
        .andExpect(status().isForbidden());
  }
}
