package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.Test;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/**
 * The pages of the demo nursery against WCAG 2.2, level AA, as far as a machine can tell, by
 * axe-core's rules.
 */
@Served
@ActiveProfiles({"test", "demo"})
class AccessibilityTest {

  private static final String[] PAGES = {
    "/",
    "/?days=90&who=bench",
    "/today/worksheet",
    "/my-calendar",
    "/arithmetic",
    "/arithmetic/dilution?stock=10000&stockUnit=ppm&wanted=0.3&wantedUnit=percent&litres=1",
    "/arithmetic/cuttings?target=100&candidate=C18-03&rooted=&weaned=101&potted=&wintered=&margin=10",
    "/candidates",
    "/candidates/C18-03",
    "/candidates/B18-01/reopen",
    "/accessions/C18-03/edit",
    "/bench",
    "/bench/runs/R22",
    "/bench/runs/R21/plan",
    "/bench/runs/R23/plan/draw",
    "/bench/runs/R23/batches/new",
    "/bench/runs/new",
    "/bench/map?on=2022-06-30",
    "/bench/trays/22-A18-04-3/place",
    "/bench/trays/22-A18-04-3/final-count",
    "/scan",
    "/labels/runs/R22",
    "/bench/round",
    "/bench/trays/26L-B18-05-1/look?round=on",
    "/bench/trays/26L-B18-05-1/taken-out?round=on",
    "/bench/trays/22-A18-04-1/weaning",
    "/bench/trays/21-B18-01-1",
    "/containers/22-C18-03-G1",
    "/containers/26-C18-03-L1/count",
    "/containers/26-C18-03-L1/cut",
    "/containers/26-C18-03-L1/winter",
    "/containers/26-C18-03-L1/grade",
    "/containers/22-C18-03-G1/measure",
    "/containers/24-F18-01-G3/shift",
    "/containers/pot",
    "/stock",
    "/stock/C18-03-S2",
    "/stock/new",
    "/stock/C18-03-S3/tested",
    "/units/22-C18-03-G1",
    "/corrections/0182f0a4-6c00-7a2e-9b41-5d0c3e7f1a28",
    "/corrections/new?kind=swap&labels=22-B18-03-1&others=22-C18-02-1&from=2022-06-20",
    "/gates",
    "/gates/propagation",
    "/gates/trial/A18-04",
    "/trials/T1",
    "/trials/T1/traits/BLOOM",
    "/field/P18",
    "/ground",
    "/ground/crops",
    "/ground/crops/ALTHEA",
    "/ground/crops/ALTHEA/edit",
    "/ground/traits",
    "/ground/traits/ALTHEA/FORM",
    "/ground/traits/ALTHEA/FORM/edit",
    "/ground/containers",
    "/ground/sites",
    "/ground/sites/CH",
    "/ground/sites/CH/edit",
    "/ground/benches",
    "/ground/benches/M1",
    "/ground/benches/M1/edit",
    "/ground/checks",
    "/ground/gates",
    "/ground/tray-likeness",
    "/ground/routes",
    "/ground/labels",
    "/ground/labels/A4%203%20x%208",
    "/ground/new-labels",
    "/ground/printers/As%20it%20comes",
    "/ground/new-printer",
    "/people",
    "/houses",
    "/houses/mist%20house",
    "/houses/mist%20house/spray",
    "/houses/mist%20house/reading",
    "/houses/new",
    "/notes/run/R22",
    "/outbox",
    "/no-signal"
  };

  @LocalServerPort private int port;

  @Test
  void no_page_of_the_desk_shuts_anybody_out() {
    walk(Browser::desk);
  }

  @Test
  void no_page_on_a_phone_shuts_anybody_out() {
    walk(Browser::phone);
  }

  private void walk(IntFunction<Browser> screen) {
    SoftAssertions all = new SoftAssertions();
    try (Browser browser = screen.apply(port)) {
      browser.signIn("breeder", DemoAccounts.PASSWORD);
      for (String page : PAGES) {
        browser.open(page);
        assertThat(browser.path()).isEqualTo(page);
        all.assertThat(browser.barriers()).as(page).isEmpty();
        all.assertThat(browser.fits()).as("%s fits its window", page).isTrue();
      }
    }
    all.assertAll();
  }
}
