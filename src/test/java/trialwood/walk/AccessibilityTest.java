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
    "/candidates",
    "/candidates/C18-03",
    "/candidates/B18-01/reopen",
    "/accessions/C18-03/edit",
    "/bench",
    "/bench/runs/R22",
    "/bench/trays/22-A18-04-3/final-count",
    "/containers/22-C18-03-G1",
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
    "/ground/checks",
    "/ground/gates",
    "/ground/routes",
    "/people"
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
