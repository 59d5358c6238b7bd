package trialwood.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;

import jakarta.servlet.http.Cookie;
import java.io.UnsupportedEncodingException;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.web.servlet.assertj.MockMvcTester;
import org.springframework.test.web.servlet.assertj.MvcTestResult;
import trialwood.label.Print.Box;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Someone;

/** Labels of the demo nursery, printed and scanned again. */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
class LabelPagesTest {

  private static final Map<String, String> CHOICE =
      Map.of(
          "format",
          "A4 3 x 8",
          "printer",
          "As it comes",
          "start",
          "1",
          "first",
          "1",
          "last",
          "1",
          "copies",
          "1");

  @Autowired private MockMvcTester browser;
  @Autowired private JdbcClient jdbc;

  @Test
  void a_printed_tray_label_opens_its_tray() throws Exception {
    String tray = one("select min(label) from unit where kind = 'TRAY'");
    MvcTestResult printed = print("/labels/units/" + tray, Map.of());
    assertThat(printed).hasStatusOk().hasContentType(MediaType.APPLICATION_PDF);

    Print print = new Print(printed.getResponse().getContentAsByteArray(), 300);
    String payload = print.decoded(0, new Box(6, 9, 64, 34));
    assertThat(get("/s/" + payload)).hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/S/" + payload)).hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/scan?code=" + payload.toLowerCase())).hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/find?q=" + payload)).hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/find?q=]Q3" + payload)).hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/find?q=https://nursery.example/s/" + payload))
        .hasRedirectedUrl("/bench/trays/" + tray);
    assertThat(get("/bench/trays/" + tray)).hasStatusOk().bodyText().contains("/labels/units/");
  }

  @Test
  void the_labels_of_a_run_are_printed_in_bench_order_on_as_many_sheets_as_they_need()
      throws Exception {
    String run = one("select max(code) from sticking_run");
    int trays =
        jdbc.sql(
                """
                select count(*) from tray t join batch b on b.id = t.batch_id
                join sticking_run r on r.id = b.run_id where r.code = ?
                """)
            .param(run)
            .query(Integer.class)
            .single();
    MvcTestResult printed =
        print("/labels/runs/" + run, Map.of("last", String.valueOf(trays), "start", "24"));
    Print print = new Print(printed.getResponse().getContentAsByteArray(), 150);
    assertThat(print.pages()).isEqualTo(1 + (trays - 1 + 23) / 24);

    Cookie kept = printed.getResponse().getCookie("labels");
    assertThat(browser.get().uri("/labels/runs/" + run).cookie(kept).with(Someone.as(Role.BENCH)))
        .hasStatusOk()
        .bodyText()
        .containsPattern("<option value=\"A4 3 x 8\" selected=\"selected\">")
        .contains("name=\"start\" value=\"%d\"".formatted((24 - 1 + trays) % 24 + 1));
  }

  @ParameterizedTest
  @CsvSource({
    "TRAY, /bench/trays/",
    "LOT, /containers/",
    "PLANT, /plants/",
    "PLOT, /trials/",
    "POSITION, /accessions/"
  })
  void every_kind_of_label_opens_a_page(String kind, String path) {
    for (String code :
        jdbc.sql(
                """
                select s.code from short_code s join unit u on u.label_key = s.label_key
                where u.kind = ? order by s.code limit 3
                """)
            .param(kind)
            .query(String.class)
            .list()) {
      MvcTestResult opened = get("/s/" + code);
      assertThat(opened).as(code).hasStatus3xxRedirection();
      String next = opened.getResponse().getRedirectedUrl();
      assertThat(next).contains(path);
      assertThat(get(next)).as(next).hasStatusOk();
    }
  }

  @Test
  void a_lot_and_its_numbered_plants_have_labels() {
    String lot =
        one(
            """
            select min(u.label) from unit u where exists
              (select 1 from plant_place p where p.lot_id = u.id and not exists
                (select 1 from plant_place later where later.plant_id = p.plant_id
                   and later.from_date > p.from_date))
            """);
    assertThat(get("/labels/plants/" + lot)).hasStatusOk().bodyText().contains("no.\u00a0");
    assertThat(print("/labels/units/" + lot, Map.of("copies", "30"))).hasStatusOk();
    assertThat(get("/labels/batches/" + one("select min(code) from batch"))).hasStatusOk();
    assertThat(get("/labels/units/no-such")).hasStatus(404);
    assertThat(get("/labels/nothing/" + lot)).hasStatus(404);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "format | nope | Pick a paper from the list.",
        "printer | '' | Pick the printer.",
        "start | 25 | The sheet has places 1 to 24.",
        "start | -1 | is not a count",
        "first | 0 | The list runs from 1 to 1.",
        "last | 9999999999 | is not a count",
        "copies | 2001 | at most 2000 labels at once",
        "copies | 0 | Print one copy or more",
      })
  void a_choice_that_cannot_be_printed_is_said_beside_its_box(
      String field, String typed, String sentence) {
    String tray = one("select min(label) from unit where kind = 'TRAY'");
    assertThat(print("/labels/units/" + tray, Map.of(field, typed)))
        .hasStatusOk()
        .hasViewName("label/labels")
        .bodyText()
        .contains(sentence);
  }

  @Test
  void a_cookie_that_is_not_ours_is_passed_over() {
    String tray = one("select min(label) from unit where kind = 'TRAY'");
    for (String kept : new String[] {"%zz~a~b", "", "~~~~", "a"}) {
      assertThat(
              browser
                  .get()
                  .uri("/labels/units/" + tray)
                  .cookie(new Cookie("labels", kept))
                  .with(Someone.as(Role.BENCH)))
          .hasStatusOk();
    }
  }

  @ParameterizedTest
  @CsvSource({
    "/s/G0013, 404, a character is wrong",
    "/s/ZZZYQ, 404, No label of ours bears ZZZYQ",
    "/scan?code=hello there, 200, five or six letters and figures",
    "/scan, 200, Scan the square",
  })
  void a_wrong_code_gets_the_box_again(String path, int status, String sentence) {
    assertThat(get(path)).hasStatus(status).bodyText().contains(sentence, "name=\"code\"");
  }

  @Test
  void a_tray_label_typed_by_hand_opens_its_tray_too() throws UnsupportedEncodingException {
    String tray = one("select min(label) from unit where kind = 'TRAY'");
    assertThat(get("/scan?code=" + tray)).hasRedirectedUrl("/find?q=" + tray);
    assertThat(get("/find?q=" + tray)).hasRedirectedUrl("/bench/trays/" + tray);
  }

  @Test
  void a_format_and_a_printer_are_added_changed_and_remembered() {
    assertThat(send("/ground/new-labels", formatWith("name", "Ours")))
        .hasRedirectedUrl("/ground/labels");
    assertThat(send("/ground/new-labels", formatWith("name", "Ours")))
        .bodyText()
        .contains("There is a format Ours already.");
    assertThat(send("/ground/labels/Ours/edit", formatWith("left", "7.5"), "version", "0"))
        .hasRedirectedUrl("/ground/labels/Ours");
    assertThat(get("/ground/labels/Ours")).bodyText().contains("<del>6</del>", "<ins>7.5</ins>");
    assertThat(get("/ground/labels/A4 3 x 8")).bodyText().contains("written down first");
    assertThat(get("/ground/labels")).bodyText().contains("Ours", "As it comes");
    assertThat(get("/ground/printers/As it comes")).hasStatusOk();
    assertThat(get("/ground/printers/As it comes/test?format=A4 3 x 8"))
        .hasStatusOk()
        .hasContentType(MediaType.APPLICATION_PDF);
    assertThat(
            send(
                "/ground/printers/As it comes/edit",
                Map.of("moveRight", "21", "moveDown", "x", "scalePercent", "100"),
                "version",
                "0"))
        .bodyText()
        .contains("“x” is not a number");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "-1",
        "NaN",
        "1e400",
        "999999999",
        "0",
        "3,5",
        "<b>",
        "99999999999999999999",
        "\u202e"
      })
  void no_value_in_a_format_or_a_printer_is_our_fault(String value) {
    for (String field : formatWith("name", "X").keySet()) {
      assertThat(send("/ground/new-labels", formatWith(field, value)).getResponse().getStatus())
          .as("%s = %s", field, value)
          .isLessThan(500);
    }
    for (String field : new String[] {"moveRight", "moveDown", "scalePercent"}) {
      Map<String, String> setting =
          new java.util.HashMap<>(
              Map.of("name", "P", "moveRight", "0", "moveDown", "0", "scalePercent", "100"));
      setting.put(field, value);
      assertThat(send("/ground/new-printer", setting).getResponse().getStatus())
          .as("%s = %s", field, value)
          .isLessThan(500);
    }
  }

  private static Map<String, String> formatWith(String field, String value) {
    Map<String, String> format =
        new java.util.TreeMap<>(
            Map.of(
                "paperWidth",
                "210",
                "paperHeight",
                "297",
                "across",
                "3",
                "down",
                "8",
                "left",
                "6",
                "top",
                "9",
                "width",
                "64",
                "height",
                "34",
                "stepRight",
                "67",
                "stepDown",
                "35"));
    format.put("name", "N" + UUID.randomUUID());
    format.put(field, value);
    return format;
  }

  private MvcTestResult send(String path, Map<String, String> boxes, String... more) {
    var request =
        browser
            .post()
            .uri(path)
            .with(Someone.as(Role.BREEDER))
            .with(csrf())
            .param("formKey", UUID.randomUUID().toString());
    boxes.forEach(request::param);
    for (int nth = 0; nth < more.length; nth += 2) {
      request.param(more[nth], more[nth + 1]);
    }
    return request.exchange();
  }

  private MvcTestResult print(String path, Map<String, String> instead) {
    var request = browser.get().uri(path + "/print").with(Someone.as(Role.BENCH));
    CHOICE.forEach((box, value) -> request.param(box, instead.getOrDefault(box, value)));
    return request.exchange();
  }

  private MvcTestResult get(String path) {
    return browser.get().uri(path).with(Someone.as(Role.BENCH)).exchange();
  }

  private String one(String query) {
    return jdbc.sql(query).query(String.class).single();
  }
}
