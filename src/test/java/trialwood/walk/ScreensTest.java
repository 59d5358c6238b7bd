package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/** Takes the pictures of the handbook from the demo nursery; see docs/make-screens.sh. */
@Served
@ActiveProfiles({"test", "demo"})
@EnabledIfSystemProperty(named = "screens", matches = ".+", disabledReason = "docs/make-screens.sh")
class ScreensTest {

  private static final Map<String, String> BREEDER =
      new TreeMap<>(
          Map.of(
              "today", "/",
              "candidates", "/candidates",
              "candidate", "/candidates/C18-03",
              "run", "/bench/runs/R22",
              "bench-map", "/bench/map?on=2022-06-30",
              "labels", "/labels/runs/R22",
              "gate-day", "/gates/trial",
              "decision", "/gates/trial/A18-01",
              "trial", "/trials/T1/traits/BLOOM",
              "lot", "/containers/26-C18-03-L1"));

  private static final Map<String, String> DOSSIER =
      Map.of(
          "dossier", "/dossiers/D18-02",
          "disclosure", "/dossiers/D18-02/disclosures/new");

  private static final Map<String, String> BENCH =
      Map.of(
          "stick", "/bench/runs/R26L/batches/new",
          "round", "/bench/round",
          "look", "/bench/trays/26L-B18-05-1/look?round=on",
          "final-count", "/bench/trays/26L-B18-05-1/final-count?round=on",
          "weaning", "/bench/trays/23-CK-B-1/weaning",
          "count", "/containers/26-C18-03-L1/count",
          "measure", "/containers/23-C18-03-G3/measure",
          "labels-right", "/corrections/new?labels=26L-B18-05-1",
          "house", "/houses/mist%20house",
          "dilution", "/arithmetic/dilution");

  @LocalServerPort private int port;

  @Test
  void pictures_of_the_desk() throws IOException {
    take(Browser::desk, "breeder", BREEDER, "desk");
    take(Browser::desk, "dossier", DOSSIER, "desk");
  }

  @Test
  void pictures_of_the_phone() throws IOException {
    take(Browser::phone, "breeder", BREEDER, "phone");
    take(Browser::phone, "bench", BENCH, "phone");
  }

  private void take(
      IntFunction<Browser> screen, String who, Map<String, String> pages, String width)
      throws IOException {
    Path folder = Files.createDirectories(Path.of(System.getProperty("screens")));
    try (Browser browser = screen.apply(port)) {
      browser.signIn(who, DemoAccounts.PASSWORD);
      for (Map.Entry<String, String> page : pages.entrySet()) {
        browser.open(page.getValue());
        assertThat(browser.text()).as(page.getValue()).doesNotContain("no such record");
        Files.write(folder.resolve("%s-%s.png".formatted(page.getKey(), width)), browser.picture());
      }
    }
  }
}
