package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
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

/** Sticking day on a phone: the check and two candidates, three trays each, in three blocks. */
@Served
@ActiveProfiles("test")
@DirtiesContext
@Import(SecondNursery.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class StickingSessionTest {

  private static final String SESSION = "/bench/runs/MIST-10/batches/new";

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;
  @Autowired private Clock clock;

  @BeforeAll
  static void moveIn(@Autowired SecondNursery nursery) throws IOException {
    nursery.moveIn();
    nursery.take("benches", "bench,name,house,places,note\nN1,north bench,mist house,12,\n");
  }

  @Test
  @Order(1)
  void what_is_unusual_about_the_run_is_asked_and_kept_with_its_answer() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/bench/runs/new");
      phone.type("run", "MIST-10");
      phone.type("check", "STD-W");
      phone.type("hormone", "K-IBA");
      phone.type("ppm", "0.3");
      phone.press("Set up the run");
      assertThat(phone.wrong("ppm")).contains("Did you mean 3,000 ppm (0.3 %)?");
      assertThat(phone.typed("ppm")).isEqualTo("0.3");

      phone.type("ppm", "12000");
      phone.press("Set up the run");
      assertThat(phone.wrong("ppm")).contains("above the usual 10,000 ppm for softwood");
      assertThat(phone.fits()).isTrue();
      assertThat(phone.barriers()).isEmpty();

      phone.type("checked", "tried on ten last week");
      phone.press("Set up the run");
      assertThat(phone.path()).isEqualTo("/bench/runs/MIST-10/plan");
      phone.open("/bench/runs/MIST-10");
      assertThat(phone.text()).contains("tried on ten last week");
    }
  }

  @Test
  @Order(2)
  void the_plan_is_drawn_with_the_check_in_every_block() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/bench/runs/MIST-10/plan/draw");
      phone.type("entries", "STD-W\nWX-31\nWX-48");
      phone.choose("benches", "N1");
      phone.type("seed", "4711");
      phone.press("Draw it");
      assertThat(phone.path()).isEqualTo("/bench/runs/MIST-10/plan");
      assertThat(phone.text()).contains("Drawn from the number 4711.");
      assertThat(phone.fits()).isTrue();
      assertThat(phone.barriers()).isEmpty();
    }
  }

  @Test
  @Order(3)
  void batch_after_batch_is_stuck_on_one_page() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open(SESSION);
      assertThat(phone.text()).contains("The bench check STD-W is missing in block 1, 2, 3.");

      stick(phone, "STD-W", "stock plant", "24", "24", "24");
      assertThat(phone.path()).isEqualTo(SESSION);
      assertThat(phone.text()).doesNotContain("is missing").contains("3 trays · 72 cuttings");
      assertThat(phone.typed("cells")).isEqualTo("24");
      assertThat(phone.typed("rows[0].stuck")).isEmpty();

      stick(phone, "WX-31", "stock plant", "24", "25", "24");
      assertThat(phone.wrong("rows[1].stuck")).isEqualTo("25 stuck, but the tray has 24 cells.");
      assertThat(stuck()).isEqualTo(72);
      phone.type("rows[1].stuck", "23");
      phone.press("Stick it");

      stick(phone, "WX-48", "stock plant", "24", "24", "20");
      phone.press("Take it back");
      assertThat(phone.text()).contains("is taken back with its 68 cuttings.");
      stick(phone, "WX-48", "stock plant", "24", "24", "24");

      assertThat(stuck()).isEqualTo(3 * 72 - 1);
      assertThat(placed()).isEqualTo(9);
      assertThat(phone.fits()).isTrue();
      assertThat(phone.barriers()).isEmpty();
    }
  }

  @Test
  @Order(4)
  void the_map_shows_what_stands_where_and_what_is_free() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/bench/map");
      assertThat(phone.row("north bench, mist house")).contains("12", "9", "3");
      assertThat(phone.text()).contains("MIST-10-WX-31-2");
      assertThat(phone.fits()).isTrue();
      assertThat(phone.barriers()).isEmpty();
    }
  }

  private static void stick(Browser phone, String code, String source, String... stuck) {
    phone.type("accession", code);
    phone.choose("source", source);
    for (int nth = 0; nth < stuck.length; nth++) {
      phone.type("rows[%d].stuck".formatted(nth), stuck[nth]);
    }
    phone.choose("by", "PF");
    phone.press("Stick it");
  }

  private int stuck() {
    return ofTheRun("coalesce(sum(t.stuck), 0)");
  }

  private int placed() {
    return ofTheRun("count(distinct t.place)");
  }

  private int ofTheRun(String what) {
    return jdbc.sql(
            "select %s from tray t join batch b on b.id = t.batch_id where b.code like 'MIST-10-%%' and t.stuck_on = ?"
                .formatted(what))
        .param(LocalDate.now(clock))
        .query(Integer.class)
        .single();
  }
}
