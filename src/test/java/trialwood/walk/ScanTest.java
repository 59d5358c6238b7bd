package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;

/**
 * A scanner is a keyboard: it types into the box that has the focus, and presses a key at the end.
 */
@Served
@ActiveProfiles("test")
@DirtiesContext
@Import(SecondNursery.class)
class ScanTest {

  private static final String TRAY = "M9-31-3";
  private static final String PAGE = "/bench/trays/" + TRAY;

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;

  @BeforeAll
  static void moveIn(@Autowired SecondNursery nursery) throws IOException {
    nursery.moveIn();
  }

  @Test
  void a_scanned_tray_is_opened_whatever_the_scanner_adds() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      for (String scanned :
          new String[] {code() + Keys.ENTER, code() + Keys.TAB, "~" + code() + Keys.ENTER}) {
        phone.open("/bench");
        phone.follow("Scan a label");
        assertThat(phone.fits()).isTrue();
        assertThat(phone.focused()).isEqualTo("code");
        phone.scan(scanned);
        assertThat(phone.path()).as(scanned).isEqualTo(PAGE);
        phone.waitBeyondDoubleRead();
      }
      assertThat(phone.text()).contains("Close tray " + TRAY);
    }
  }

  @Test
  void a_double_read_is_one() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/scan");
      phone.scan(code() + Keys.ENTER + code() + Keys.ENTER);
      assertThat(phone.path()).isEqualTo(PAGE);
    }
  }

  @Test
  void a_slip_is_said_and_what_was_typed_stays() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("piet", SecondNursery.PASSWORD);
      phone.open("/scan");
      String slip = code().substring(0, 4) + (code().endsWith("0") ? "1" : "0");
      phone.type("code", slip);
      phone.press("Open");
      assertThat(phone.text()).contains("Read it once more.");
      assertThat(phone.typed("code")).isEqualTo(slip);
      assertThat(phone.barriers()).isEmpty();
    }
  }

  private String code() {
    return jdbc.sql("select code from short_code where label_key = ?")
        .param(TRAY)
        .query(String.class)
        .single();
  }
}
