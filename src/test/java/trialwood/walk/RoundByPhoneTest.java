package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.context.annotation.Primary;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/**
 * The round of the demo's late run on a phone: looks on 25 November 2026, and final counts on 3
 * December, with what a hand does counted in the page.
 */
@Served
@ActiveProfiles({"test", "demo"})
@DirtiesContext
@Import(RoundByPhoneTest.Days.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class RoundByPhoneTest {

  /** What 6-screens asks of a final count of 24. */
  private static final int MOST_TAPS = 6;

  private static final int MOST_CHARACTERS = 6;

  private static final int MOST_BYTES = 60_000;

  private static LocalDate today = LocalDate.of(2026, 11, 25);

  @LocalServerPort private int port;

  /** A clock that the test sets to a day. */
  @TestConfiguration(proxyBeanMethods = false)
  static class Days {

    @Bean
    @Primary
    Clock days() {
      return new Clock() {
        @Override
        public ZoneId getZone() {
          return ZoneId.systemDefault();
        }

        @Override
        public Clock withZone(ZoneId zone) {
          return this;
        }

        @Override
        public Instant instant() {
          return today.atTime(9, 0).atZone(getZone()).toInstant();
        }
      };
    }
  }

  @Test
  @Order(1)
  void the_round_says_what_is_late_and_leads_to_the_first_look() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/bench/round");
      assertThat(phone.text()).contains("12 waiting");
      assertThat(phone.row("26L-E18-02-3")).contains("missed", "not looked at for 11 days");
      assertThat(phone.row("26L-B18-05-1")).contains("overdue", "since 23");
      assertThat(phone.fits()).isTrue();
      assertThat(phone.barriers()).isEmpty();

      phone.follow("Go to 26L-B18-05-1");
      assertThat(phone.text()).contains("1 of 12", "2 of 5 rooted, 23 alive");
      assertThat(phone.barriers()).isEmpty();
    }
  }

  @Test
  @Order(2)
  void a_look_leads_to_the_next_tray_and_an_odd_one_is_asked_about() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/bench/round");
      phone.follow("Go to 26L-B18-05-1");
      look(phone, "4", "24");
      phone.choose("by", "MK");
      phone.press("Save the look");
      assertThat(phone.text())
          .contains("24 alive and 0 dead, but 1 of the 24 stuck left the tray before.");

      phone.type("alive", "23");
      phone.press("Save the look");
      assertThat(phone.text()).contains("Stored for tray 26L-B18-05-1.", "2 of 12");
      assertThat(phone.path()).startsWith("/bench/trays/26L-CK-B-1/look");

      phone.follow("Correct it");
      assertThat(phone.path()).startsWith("/bench/trays/26L-B18-05-1/look").contains("round=on");
      phone.open("/bench/trays/26L-E18-02-3/look?round=on");
      look(phone, "2", "24");
      phone.press("Save the look");
      assertThat(phone.text()).contains("Is this right?", "Nobody looked for 11 days");
      phone.type("checked", "two of us were ill");
      phone.press("Save the look");
      phone.open("/bench/trays/26L-E18-02-3");
      assertThat(phone.text()).contains("Nobody looked for 11 days", "two of us were ill", "MK");
    }
  }

  private static void look(Browser phone, String rooted, String alive) {
    phone.type("lifted", "5");
    phone.type("rooted", rooted);
    phone.type("alive", alive);
  }

  @Test
  @Order(3)
  void a_final_count_of_24_takes_few_taps_and_few_keys() {
    today = LocalDate.of(2026, 12, 3);
    String[][] counts = {
      {"21", "Dead 3"}, {"22", "Dead 2"}, {"20", "Dead 4"}, {"19", "Dead 5"}, {"21", "Dead 3"}
    };
    List<Integer> taps = new ArrayList<>();
    List<Integer> characters = new ArrayList<>();
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/bench/round");
      phone.countHands();
      phone.follow("Go to 26L-");
      phone.choose("by", "JT");
      for (int at = 0; at < counts.length; at++) {
        String tray = phone.path();
        phone.tapInto("rooted", counts[at][0]);
        phone.tapButton(counts[at][1]);
        phone.choose("rootScore", "4");
        phone.press("Save, close the tray");
        assertThat(phone.path()).isNotEqualTo(tray).contains("/final-count", "round=on");
        Browser.Hands hands = phone.hands();
        taps.add(hands.taps());
        characters.add(hands.keys());
      }
      assertThat(phone.text()).contains("6 of 12");
    }
    assertThat(taps).as("taps").allMatch(n -> n > 0 && n <= MOST_TAPS);
    assertThat(median(taps)).isLessThanOrEqualTo(MOST_TAPS);
    assertThat(characters).as("characters").allMatch(n -> n > 0);
    assertThat(median(characters)).isLessThanOrEqualTo(MOST_CHARACTERS);
  }

  private static int median(List<Integer> numbers) {
    return numbers.stream().sorted().toList().get(numbers.size() / 2);
  }

  @Test
  @Order(4)
  void closed_trays_come_up_again_a_week_off_the_mist() {
    today = LocalDate.of(2026, 12, 10);
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/bench/round");
      assertThat(phone.row("26L-B18-05-1")).contains("due", "Weaning, 7 days off the mist");

      phone.open("/bench/trays/26L-B18-05-1/weaning?round=on");
      phone.type("lastMist", "4 Dec 2026");
      phone.type("alive", "25");
      phone.choose("by", "JT");
      phone.press("Save");
      assertThat(phone.wrong("alive")).contains("25 alive, but the final count left 21 rooted");
      phone.type("alive", "20");
      phone.press("Save");
      assertThat(phone.text()).contains("Stored for tray 26L-B18-05-1.");

      phone.open("/bench/trays/26L-CK-B-1/weaning?round=on");
      assertThat(phone.typed("lastMist")).isEqualTo("4 Dec 2026");
      assertThat(phone.barriers()).isEmpty();
      assertThat(phone.fits()).isTrue();
    }
  }

  @Test
  @Order(5)
  void the_inspection_form_is_light() {
    try (Browser phone = Browser.phone(port)) {
      phone.signIn("bench", DemoAccounts.PASSWORD);
      phone.open("/bench/trays/26L-A18-01-2/look?round=on");
      int bytes = phone.weight();
      assertThat(bytes).isBetween(20_000, MOST_BYTES);
    }
  }
}
