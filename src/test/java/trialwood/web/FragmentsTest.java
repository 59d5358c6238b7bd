package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.context.junit.jupiter.web.SpringJUnitWebConfig;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.setup.MockMvcBuilders;
import org.springframework.web.context.WebApplicationContext;

/**
 * Every fragment with example data: what a page owes to those who use it by ear, by keyboard or on
 * paper. The pages are left in {@code target/gallery} to be looked at.
 */
@SpringJUnitWebConfig(Gallery.class)
class FragmentsTest {

  private static final Path OUT = Path.of("target/gallery");
  private static final Path TEMPLATES = Path.of("src/main/resources/templates");

  private @Autowired WebApplicationContext context;
  private MockMvc pages;

  @BeforeEach
  void open() {
    pages = MockMvcBuilders.webAppContextSetup(context).build();
  }

  static Stream<String> everyPage() {
    return Stream.of(
        "GET candidate",
        "GET gate",
        "GET count",
        "GET form",
        "GET list?q=C18&stage=4&sort=-code&page=2",
        "POST gate",
        "POST count",
        "POST form",
        "POST list",
        "GET error 404",
        "GET error 500");
  }

  @ParameterizedTest
  @MethodSource("everyPage")
  void a_page_is_sound(String page) throws Exception {
    String html = rendered(page);
    assertThat(html).startsWith("<!doctype html>").contains("<html lang=\"en\"");
    assertThat(count(html, "<h1[ >]")).isEqualTo(1);
    assertThat(count(html, "<main[ >]")).isEqualTo(1);
    assertThat(html)
        .doesNotContain("type=\"number\"")
        .doesNotContainPattern("\\sth:")
        .doesNotContainPattern("\\sstyle=")
        .doesNotContainPattern("\\son[a-z]+=")
        .doesNotContainPattern("<script(?![^>]*\\ssrc=)")
        .doesNotContain("<style");
  }

  @ParameterizedTest
  @MethodSource("everyPage")
  void every_box_has_a_label(String page) throws Exception {
    String html = rendered(page);
    for (String box : all(html, "<(?:input|select|textarea)\\b[^>]*>")) {
      if (box.contains("type=\"hidden\"")) {
        continue;
      }
      boolean named = box.contains("aria-label=\"");
      boolean wrapped = html.contains("<label>" + box);
      boolean pointedAt = html.contains("for=\"" + attribute(box, "id") + "\"");
      assertThat(named || wrapped || pointedAt).as(box).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("everyPage")
  void ids_are_unique_and_what_is_pointed_at_is_there(String page) throws Exception {
    String html = rendered(page);
    List<String> ids = values(html, "id");
    assertThat(ids).doesNotHaveDuplicates();
    Set<String> there = Set.copyOf(ids);
    for (String name : List.of("for", "aria-describedby", "aria-labelledby")) {
      assertThat(there).as(name).containsAll(values(html, name));
    }
    assertThat(there)
        .containsAll(
            values(html, "href").stream()
                .filter(h -> h.length() > 1 && h.startsWith("#"))
                .map(h -> h.substring(1))
                .toList());
  }

  @Test
  void what_is_wrong_stands_beside_its_field_and_in_a_list_that_leads_there() throws Exception {
    String html = rendered("POST count");
    assertThat(html)
        .contains("<title>Error: Final count · bench 2 · Trialwood</title>")
        .contains("5 things to put right")
        .contains("href=\"#rooted\"");
    String box = all(html, "<input[^>]*id=\"rooted\"[^>]*>").get(0);
    assertThat(box)
        .contains("aria-invalid=\"true\"")
        .contains("aria-describedby=\"rooted-said\"")
        .contains("value=\"25\"");
    assertThat(html)
        .containsPattern(
            "(?s)id=\"rooted-said\">\\s*<p class=\"hint\">[^<]*</p>\\s*<p class=\"wrong\">25 recorded");
  }

  @Test
  void a_refused_form_keeps_its_key_and_what_was_typed() throws Exception {
    String html = rendered("POST form");
    assertThat(html)
        .containsPattern("<input[^>]*type=\"hidden\"[^>]*value=\"k1\"")
        .contains("value=\"5/6/2026\"")
        .contains("value=\"B22&lt;b&gt;\"");
  }

  @Test
  void a_decision_is_never_taken_beforehand() throws Exception {
    String html = rendered("POST gate");
    assertThat(all(html, "<input[^>]*type=\"radio\"[^>]*>"))
        .hasSize(12)
        .noneMatch(radio -> radio.contains("checked"));
    assertThat(all(rendered("GET gate"), "<input[^>]*checked[^>]*>"))
        .singleElement()
        .asString()
        .contains("value=\"ADVANCE\"");
  }

  @Test
  void links_of_a_list_keep_the_query() throws Exception {
    String html = rendered("GET list?q=C18&stage=4&sort=-code&page=2");
    assertThat(html)
        .contains("aria-sort=\"descending\"")
        .contains("href=\"?q=C18&amp;stage=4&amp;sort=code\"")
        .contains("href=\"?q=C18&amp;stage=4&amp;sort=-code&amp;page=3\"")
        .contains("href=\"?q=C18&amp;stage=4&amp;sort=-code\"")
        .contains("href=\"/candidates.csv?q=C18&amp;stage=4&amp;sort=-code&amp;page=2\"")
        .contains("51–100 of 2\u202f391");
  }

  @Test
  void a_verdict_is_a_word_with_a_mark() throws Exception {
    assertThat(rendered("GET candidate").replaceAll("<[^>]*>", ""))
        .contains("● meets", "◐ not settled", "▼ falls short", "○ no record", "◐ expired");
  }

  @Test
  void a_picture_says_in_words_what_it_draws() throws Exception {
    String html = rendered("GET candidate");
    assertThat(all(html, "(?s)<svg[^>]*role=\"img\"[^>]*>\\s*<title>[^<]+</title>")).hasSize(5);
    assertThat(html).contains("aria-current=\"step\"");
  }

  @ParameterizedTest
  @ValueSource(ints = {400, 401, 403, 404, 405, 409, 413, 415, 429, 418, 500, 503})
  void an_error_is_told_in_plain_words(int status) throws Exception {
    String html = rendered("GET error " + status);
    assertThat(html)
        .contains("Go to Today")
        .doesNotContain("Exception")
        .doesNotContain("" + status);
  }

  @Test
  void every_fragment_is_shown_here() throws Exception {
    String shown;
    try (Stream<Path> files = Files.walk(Path.of("src/test/resources/templates/gallery"))) {
      shown =
          files.filter(Files::isRegularFile).map(FragmentsTest::text).collect(Collectors.joining());
    }
    try (Stream<Path> files = Files.list(TEMPLATES.resolve("fragments"))) {
      for (Path file : files.toList()) {
        String own = text(file);
        for (String name : all(own, "th:fragment=\"\\w+")) {
          String use = ":: " + name.substring(name.indexOf('"') + 1);
          assertThat(shown.contains(use) || own.contains(use)).as(file + " " + use).isTrue();
        }
      }
    }
  }

  private String rendered(String page) throws Exception {
    String[] words = page.split(" ");
    MockHttpServletRequestBuilder request =
        words[1].equals("error")
            ? get("/errors/" + words[2])
            : words[0].equals("GET") ? get("/gallery/" + words[1]) : refused(words[1]);
    MockHttpServletResponse answer = pages.perform(request).andReturn().getResponse();
    assertThat(answer.getStatus()).isEqualTo(200);
    String html = answer.getContentAsString(StandardCharsets.UTF_8);
    Files.createDirectories(OUT);
    Files.writeString(OUT.resolve(page.replaceAll("\\?.*", "").replace(' ', '-') + ".html"), html);
    return html;
  }

  private static MockHttpServletRequestBuilder refused(String page) {
    return post("/gallery/" + page)
        .flashAttr("status", "Tray 1 of C18-03 saved.")
        .flashAttr("undo", "/bench/undo/7")
        .param("formKey", "k1")
        .param("label", "B22<b>")
        .param("rooted", "25")
        .param("on", "5/6/2026")
        .param("_wounded", "on")
        .param("rows[0].decision", "")
        .param("rows[1].decision", "1250")
        .param("rows[2].decision", "")
        .param("rows[3].decision", "");
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  private static int count(String html, String pattern) {
    return all(html, pattern).size();
  }

  private static List<String> all(String html, String pattern) {
    return Pattern.compile(pattern).matcher(html).results().map(MatchResult::group).toList();
  }

  private static List<String> values(String html, String name) {
    return Pattern.compile("\\s" + name + "=\"([^\"]*)\"")
        .matcher(html)
        .results()
        .map(r -> r.group(1))
        .toList();
  }

  private static String attribute(String tag, String name) {
    return values(tag, name).stream().findFirst().orElse("");
  }
}
