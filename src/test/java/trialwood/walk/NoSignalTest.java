package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.support.TransactionTemplate;
import trialwood.container.Nursery;

/** At a bench where the signal goes and comes back. The way to the application is really cut. */
@Served
@ActiveProfiles("test")
@TestPropertySource(properties = "trialwood.nursery=The far bench")
@Import({SecondNursery.class, Nursery.class})
@DirtiesContext
class NoSignalTest {

  private static final String TRAY = "/bench/trays/M9-31-3";
  private static final String LOT = "/containers/M9-31-G1";

  /** The fields of the first entry that waits, as they are sent. */
  private static final String BODY =
      """
      const { all } = await import("/js/store.js");
      done(new URLSearchParams((await all())[0].fields).toString());
      """;

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;
  @TempDir private Path storage;

  private Cable cable;
  private Browser phone;

  @BeforeAll
  static void moveIn(
      @Autowired SecondNursery nursery,
      @Autowired Nursery yard,
      @Autowired TransactionTemplate transaction)
      throws IOException {
    nursery.moveIn();
    transaction.executeWithoutResult(
        opened -> {
          yard.height();
          yard.numbered(yard.lot("M9-31-G1", "WX-31", 20), "M9-31-G1", 2);
        });
  }

  @BeforeEach
  void the_tray_was_opened_before_the_signal_went() throws IOException {
    jdbc.sql("delete from tray_look").update();
    // somebody looked two days ago, so that nobody is asked why nobody did
    jdbc.sql(
            """
            insert into tray_look (id, tray_id, on_date, lifted, rooted, alive, dead_removed, account, recorded_at)
            select random_uuid(), id, current_date - 2, 4, 1, 24, 0, 'piet', current_timestamp
            from unit where label = ?
            """)
        .param("M9-31-3")
        .update();
    jdbc.sql("delete from final_count where tray_id = (select id from unit where label = ?)")
        .param("M9-31-3")
        .update();
    cable = new Cable(port);
    phone = Browser.phone(cable.port(), storage);
    phone.signIn("piet", SecondNursery.PASSWORD);
    phone.open(TRAY);
    untilKept(TRAY + "/look");
    untilKept(TRAY + "/final-count");
    cable.cut();
  }

  @AfterEach
  void off() {
    phone.close();
    cable.close();
  }

  @Test
  void two_looks_typed_on_one_kept_page_are_two_and_are_stored_once_each() throws IOException {
    look("4");
    phone.untilOutboxSays("1 not sent yet");
    assertThat(phone.path()).isEqualTo(TRAY);
    assertThat(phone.text()).contains("No signal. This page is as it was on");
    look("3");
    phone.untilOutboxSays("2 not sent yet");
    phone.open(TRAY);
    phone.untilOutboxSays("2 not sent yet");
    phone.open("/outbox");
    phone.untilSays("Waits to be sent.");
    assertThat(phone.text()).contains("Look · M9-31-3", "Rooted of those", "as piet (PF)");
    assertThat(phone.barriers()).isEmpty();
    assertThat(phone.fits()).isTrue();
    Object body = phone.ask(BODY);
    assertThat(looks()).isZero();

    cable.mend();
    phone.tap("Send now");
    phone.ask("document.dispatchEvent(new CustomEvent('send')); done();");
    phone.untilOutboxSays("all sent");
    assertThat(looks()).isEqualTo(2);

    assertThat(phone.ask(again(body))).isEqualTo(204L);
    assertThat(looks()).isEqualTo(2);
  }

  @Test
  void a_count_that_is_refused_comes_back_to_its_author_with_what_was_typed_and_why()
      throws IOException {
    phone.follow("Final count");
    phone.type("rooted", "25");
    phone.type("aliveWithoutRoots", "0");
    phone.type("dead", "0");
    phone.choose("rootScore", "4");
    phone.choose("by", "PF");
    phone.press("Save, close the tray");
    phone.untilOutboxSays("1 not sent yet");

    cable.mend();
    phone.open("/outbox");
    phone.untilOutboxSays("1 came back");
    assertThat(phone.text()).contains("It is not stored", "24", "25");
    cable.cut();
    phone.follow("Put it right");
    assertThat(phone.wrong("rooted")).contains("24");
    assertThat(phone.typed("rooted")).isEqualTo("25");
    phone.type("rooted", "23");
    phone.press("Save, close the tray");
    phone.untilOutboxSays("1 not sent yet");
    assertThat(looks()).isZero();

    cable.mend();
    phone.open("/outbox");
    phone.untilOutboxSays("1 came back");
    phone.tap("Throw it away");
    assertThat(phone.text()).contains("It cannot be brought back.");
    phone.tap("Keep it");
    phone.follow("Put it right");
    assertThat(phone.typed("rooted")).isEqualTo("23");
    phone.type("dead", "1");
    phone.press("Save, close the tray");
    assertThat(phone.text()).contains("Stored for tray M9-31-3.");
    phone.untilOutboxSays("all sent");
    assertThat(closings()).isOne();
  }

  @Test
  void a_measuring_sheet_comes_back_with_its_bad_line_only_and_a_lot_is_counted_once()
      throws IOException {
    int before = measured();
    cable.mend();
    phone.open(LOT);
    untilKept(LOT + "/measure");
    untilKept(LOT + "/count");
    cable.cut();
    phone.follow("Measure");
    phone.type("lines[0].cells[0]", "61");
    phone.type("lines[1].cells[0]", "sixty");
    phone.press("Save");
    phone.untilOutboxSays("1 not sent yet");
    phone.follow("Count");
    phone.type("alive", "20");
    phone.press("Save the count");
    phone.untilOutboxSays("2 not sent yet");
    assertThat(phone.path()).isEqualTo(LOT);

    cable.mend();
    phone.open("/outbox");
    phone.untilOutboxSays("1 came back");
    assertThat(phone.text()).contains("is no number").doesNotContain("not sent yet ·");
    assertThat(measured()).isEqualTo(before + 1);
    assertThat(jdbc.sql("select count(*) from lot_count").query(Integer.class).single()).isOne();
    phone.follow("Put it right");
    assertThat(phone.typed("lines[0].cells[0]")).isEqualTo("sixty");
    phone.type("lines[0].cells[0]", "60");
    phone.press("Save");
    phone.untilOutboxSays("all sent");
    assertThat(measured()).isEqualTo(before + 2);
  }

  @Test
  void after_three_weeks_a_restart_and_the_end_of_the_session_it_is_sent_by_who_typed_it()
      throws IOException {
    look("4");
    phone.untilOutboxSays("1 not sent yet");
    phone.ask(
        """
        const { all, put } = await import("/js/store.js");
        for (const entry of await all()) await put({ ...entry, typedAt: entry.typedAt - 21 * 864e5 });
        done();
        """);
    phone.loseSession();
    phone.close();

    phone = Browser.phone(cable.port(), storage);
    phone.open("/outbox");
    phone.untilOutboxSays("1 not sent yet");
    cable.mend();
    phone.open("/outbox");
    phone.untilOutboxSays("sign in to send");
    assertThat(looks()).isZero();

    phone.signIn("odile", SecondNursery.PASSWORD);
    phone.open("/outbox");
    phone.untilSays("Waits until piet signs in.");
    assertThat(phone.text()).contains("Send it as OB");
    assertThat(looks()).isZero();

    phone.open("/");
    phone.signOut();
    phone.signIn("piet", SecondNursery.PASSWORD);
    phone.untilOutboxSays("all sent");
    assertThat(
            jdbc.sql("select account from tray_look where on_date > current_date - 2")
                .query(String.class)
                .list())
        .containsExactly("piet");
  }

  @Test
  void a_device_on_which_somebody_signed_out_shows_no_page_of_theirs() throws IOException {
    cable.mend();
    phone.open(TRAY);
    phone.signOut();
    cable.cut();
    phone.open(TRAY);
    assertThat(phone.text()).contains("This page is not on this device.", "None.");
    assertThat(phone.barriers()).isEmpty();
  }

  /** Opens the form from the tray's page and comes back to it. */
  private void look(String rooted) {
    phone.open(TRAY);
    phone.follow("Look");
    phone.type("lifted", "5");
    phone.type("rooted", rooted);
    phone.type("alive", "24");
    phone.choose("by", "PF");
    phone.press("Save the look");
  }

  private void untilKept(String page) {
    phone.ask(
        "while (!await caches.match('%s')) await new Promise((on) => setTimeout(on, 100)); done();"
            .formatted(page));
  }

  /** A second arrival of what was sent before. */
  private static String again(Object body) {
    return """
    const { token } = await (await fetch("/outbox/token")).json();
    const headers = { "X-Outbox": "e1", "X-CSRF-TOKEN": token };
    const body = new URLSearchParams("%s");
    done((await fetch("%s/look", { method: "POST", headers, body })).status);
    """
        .formatted(body, TRAY);
  }

  private int looks() {
    return jdbc.sql("select count(*) from tray_look where on_date > current_date - 2")
        .query(Integer.class)
        .single();
  }

  private int measured() {
    return jdbc.sql("select count(*) from observation").query(Integer.class).single();
  }

  private int closings() {
    return jdbc.sql(
            "select count(*) from final_count f join unit u on u.id = f.tray_id where u.label = ?")
        .param("M9-31-3")
        .query(Integer.class)
        .single();
  }
}
