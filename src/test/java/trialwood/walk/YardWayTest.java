package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/** A day in the yard of the demo nursery, on a phone: potting, counting, measuring. */
@Served
@ActiveProfiles({"test", "demo"})
@DirtiesContext
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class YardWayTest {

  private static final String LOT = "26-E18-02-G1";

  @LocalServerPort private int port;

  private Browser phone() {
    Browser phone = Browser.phone(port);
    phone.signIn("bench", DemoAccounts.PASSWORD);
    return phone;
  }

  @Test
  @Order(1)
  void more_plants_than_were_weaned_are_asked_about_and_potted_with_the_answer() {
    try (Browser phone = phone()) {
      phone.open("/containers/pot?tray=22-E18-02-1");
      assertThat(phone.typed("accession")).isEqualTo("E18-02");
      phone.type("lot", LOT);
      phone.type("number", "24");
      phone.pick("containerClass", "#1");
      phone.type("litres", "2,8");
      phone.type("sources[0].number", "24");
      phone.press("Pot");
      assertThat(phone.text()).contains("Where do the others come from?");
      phone.type("checked", "spare liners of the same tray");
      phone.press("Pot");
      assertThat(phone.path()).isEqualTo("/containers/" + LOT);
      assertThat(phone.text())
          .contains("24 potted in 67 litres of medium.", "spare liners of the same tray");
    }
  }

  @Test
  @Order(2)
  void what_died_closes_the_count() {
    try (Browser phone = phone()) {
      phone.open("/containers/" + LOT);
      phone.follow("Count");
      phone.type("alive", "22");
      phone.type("rows[0].number", "1");
      phone.type("rows[0].reason", "roots brown");
      phone.press("Save the count");
      assertThat(phone.text()).contains("22 alive, but the records leave 23");
      phone.type("rows[1].number", "1");
      phone.type("rows[1].reason", "dried out");
      phone.press("Save the count");
      assertThat(phone.text()).contains("22 alive in " + LOT, "roots brown", "dried out");
    }
  }

  @Test
  @Order(3)
  void five_plants_are_measured_without_a_mouse() {
    try (Browser phone = phone()) {
      phone.open("/containers/" + LOT + "/plants");
      phone.type("number", "5");
      phone.press("Number");
      phone.open("/containers/" + LOT + "/measure?trait=HEIGHT&trait=WIDTH1");
      phone.type("lines[0].cells[0]", "");
      phone.typeOn("41\n43,5\n40\ndead\n42");
      assertThat(phone.typed("lines[4].cells[0]")).isEqualTo("42");
      phone.press("Save");
      assertThat(phone.text()).contains("5 plants stored.");
    }
  }

  @Test
  @Order(4)
  void a_block_is_pasted_looked_over_and_then_stored() {
    try (Browser phone = phone()) {
      phone.open("/containers/" + LOT + "/measure?trait=WIDTH1&trait=WIDTH2");
      phone.unfold("Paste a block from a spreadsheet");
      phone.type("block", "plant;WIDTH1;WIDTH2\n1;31;29,5\n2;wide;30\n3;33;31");
      phone.press("Put it into the boxes");
      assertThat(phone.text()).contains("Nothing is stored yet.", "“wide” is no number");
      phone.type("lines[1].cells[0]", "32");
      phone.press("Save");
      assertThat(phone.text()).contains("3 plants stored.");
    }
  }

  @Test
  @Order(5)
  void a_stock_plant_that_tests_positive_gives_no_more_cuttings() {
    try (Browser phone = phone()) {
      phone.open("/stock/new");
      phone.type("label", "E18-02-S1");
      phone.type("accession", "E18-02");
      phone.type("number", "1");
      phone.type("since", "2026-10-01");
      phone.type("place", "stock hedge behind the mist house");
      phone.type("origin", "22-E18-02");
      phone.press("Keep it");
      assertThat(phone.path()).isEqualTo("/stock/E18-02-S1");
      assertThat(phone.text()).contains("Only one stock plant is left");

      phone.follow("Virus test");
      phone.type("agent", "virus panel");
      phone.type("on", "2026-10-20");
      phone.choose("result", "Positive");
      phone.press("Save");
      assertThat(phone.text()).contains("No cuttings from this plant", "virus panel: positive");

      phone.open("/bench/runs/R26L/batches/new");
      phone.type("accession", "E18-02");
      phone.choose("source", "stock plant");
      phone.type("plant", "E18-02-S1");
      phone.type("cells", "24");
      phone.type("rows[0].stuck", "24");
      phone.type("on", "2026-11-03");
      phone.press("Stick it");
      assertThat(phone.text()).contains("E18-02-S1 tested positive on 20 Oct 2026");
    }
  }
}
