package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;

/**
 * From the bench to the gate and on to the dossier, in a nursery that the demo knows nothing of.
 */
@Served
@ActiveProfiles("test")
@Import(SecondNursery.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
@DirtiesContext
class WholeWayTest {

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;

  @BeforeAll
  static void moveIn(@Autowired SecondNursery nursery) throws IOException {
    nursery.moveIn();
  }

  @Test
  @Order(1)
  void two_trays_of_three_leave_the_gate_unsettled() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("odile", SecondNursery.PASSWORD);
      desk.follow("Gates");
      desk.open("/gates/propagation");
      assertThat(desk.row("WX-31")).contains("for hold");
      assertThat(desk.row("WX-48")).contains("for discard");
    }
  }

  @Test
  @Order(2)
  void the_bench_closes_the_tray_that_is_due_on_a_phone() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.follow("Bench");
      phone.follow("Walk the round");
      phone.follow("M9-31-3");
      assertThat(phone.fits()).isTrue();

      count(phone, "25");
      phone.press("Save, close the tray");
      assertThat(phone.wrong("rooted")).contains("24");
      assertThat(phone.typed("rooted")).isEqualTo("25");
      assertThat(closings()).isZero();

      count(phone, "23");
      phone.pressTwice("Save, close the tray");
      assertThat(phone.path()).startsWith("/bench/");
      assertThat(phone.text()).contains("Stored for tray M9-31-3.");
      assertThat(closings()).isOne();
    }
  }

  private static void count(Browser phone, String rooted) {
    phone.type("rooted", rooted);
    phone.type("aliveWithoutRoots", "0");
    phone.type("dead", rooted.equals("25") ? "0" : "1");
    phone.type("takenOut", "0");
    phone.choose("rootScore", "4");
    phone.choose("by", "PF");
  }

  private int closings() {
    return jdbc.sql(
            "select count(*) from final_count f join unit u on u.id = f.tray_id where u.label = ?")
        .param("M9-31-3")
        .query(Integer.class)
        .single();
  }

  @Test
  @Order(3)
  void the_third_tray_lets_the_records_speak_for_advance() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("odile", SecondNursery.PASSWORD);
      desk.open("/gates/propagation");
      assertThat(desk.row("WX-31")).contains("for advance");
    }
  }

  @Test
  @Order(4)
  void who_decides_against_the_records_gives_a_reason() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("odile", SecondNursery.PASSWORD);
      desk.open("/gates/propagation");
      desk.follow("WX-48");
      assertThat(desk.text()).contains("The records speak for discard.");

      desk.choose("choice", "advance");
      desk.press("Put it on record");
      assertThat(desk.wrong("reason")).isNotBlank();

      desk.type("reason", "The only one that flowers twice; it goes on by layering.");
      desk.press("Put it on record");
      assertThat(desk.path()).isEqualTo("/gates/propagation");
      assertThat(desk.text()).contains("WX-48: the decision is on record.");

      desk.open("/find?q=wx-48");
      assertThat(desk.text()).contains("at the stage of container");
    }
  }

  @Test
  @Order(5)
  void the_dossier_tells_where_it_came_from_and_prints_it() throws IOException {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("nan", SecondNursery.PASSWORD);
      desk.open("/find?q=wx-31");
      desk.follow("Dossier");
      assertThat(desk.path()).isEqualTo("/dossiers/WX-31");
      assertThat(desk.barriers()).isEmpty();

      Paper paper = Paper.of(desk.fetch("PDF"));
      assertThat(paper.text())
          .contains("Dossier of WX-31", "Weigela florida")
          .contains("Seedling of seed parent MOTHER-7")
          .contains("Stood in population SB3", "at Mill Field, row 2, position 17", "Odile Brandt")
          .contains("Batch M9-31 of run MIST-9: cuttings of the original plant")
          .contains("65 of 72 had rooted")
          .contains("a licensed practitioner decides");
    }
  }

  @Test
  @Order(6)
  void what_was_typed_outlives_the_session() {
    try (Browser desk = Browser.desk(port)) {
      desk.signIn("nan", SecondNursery.PASSWORD);
      desk.open("/dossiers/WX-31/disclosures/new");
      desk.pick("kind", "gift");
      desk.type("on", "today");
      desk.type("territory", "UK");
      desk.type("toWhom", "the miller & his <dog>");
      desk.loseSession();
      desk.press("Log the disclosure");

      assertThat(desk.text()).contains("Your form is kept");
      desk.signInHere("nan", SecondNursery.PASSWORD);
      desk.press("Open the form again");
      assertThat(desk.typed("toWhom")).isEqualTo("the miller & his <dog>");
      assertThat(desk.typed("kind")).isEqualTo("GIFT");
      assertThat(disclosed()).isZero();

      desk.press("Log the disclosure");
      assertThat(desk.text()).contains("The disclosure is logged", "the miller & his <dog>");
      assertThat(disclosed()).isOne();
    }
  }

  private int disclosed() {
    return jdbc.sql("select count(*) from disclosure").query(Integer.class).single();
  }
}
