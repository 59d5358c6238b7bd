package trialwood.correction;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class PeriodTest {

  static final UUID TRAY = new UUID(0, 1);
  static final UUID WHITE = new UUID(0, 2);
  static final UUID PINK = new UUID(0, 3);
  static final LocalDate JUNE = LocalDate.of(2022, 6, 6);
  static final LocalDate JULY = LocalDate.of(2022, 7, 5);
  static final LocalDate AUTUMN = LocalDate.of(2022, 9, 8);

  @Test
  void an_open_period_reads_since_its_first_day() {
    assertThat(plain(Period.words(List.of(white(JUNE, Period.OPEN)))))
        .isEqualTo("C18-03 since 6 Jun 2022");
  }

  @Test
  void a_later_word_cuts_the_earlier_on_its_first_day() {
    assertThat(with(pink(JULY, Period.OPEN)))
        .containsExactly(white(JUNE, JULY), pink(JULY, Period.OPEN));
    assertThat(words(pink(JULY, Period.OPEN))).isEqualTo("C18-03 until 5 Jul 2022, then C18-04");
  }

  @Test
  void after_its_last_day_the_earlier_holds_again() {
    assertThat(with(pink(JULY, AUTUMN)))
        .containsExactly(white(JUNE, JULY), pink(JULY, AUTUMN), white(AUTUMN, Period.OPEN));
    assertThat(words(pink(JULY, AUTUMN)))
        .isEqualTo("C18-03 until 5 Jul 2022, then C18-04 until 8 Sep 2022, then C18-03");
  }

  @Test
  void a_word_for_all_days_leaves_nothing_of_the_earlier() {
    assertThat(with(pink(JUNE, Period.OPEN))).containsExactly(pink(JUNE, Period.OPEN));
  }

  @Test
  void the_same_word_twice_reads_as_one() {
    assertThat(words(white(JULY, AUTUMN))).isEqualTo("C18-03 since 6 Jun 2022");
  }

  @Test
  void days_that_only_meet_do_not_touch() {
    assertThat(white(JUNE, JULY).touches(JULY, AUTUMN)).isFalse();
    assertThat(white(JUNE, JULY.plusDays(1)).touches(JULY, AUTUMN)).isTrue();
  }

  private static List<Period> with(Period later) {
    return Period.with(later, List.of(white(JUNE, Period.OPEN)));
  }

  private static String words(Period later) {
    return plain(Period.words(with(later)));
  }

  private static String plain(String words) {
    return words.replace('\u00a0', ' ').replace('\u202f', ' ');
  }

  private static Period white(LocalDate from, LocalDate until) {
    return new Period(TRAY, from, until, WHITE, "C18-03");
  }

  private static Period pink(LocalDate from, LocalDate until) {
    return new Period(TRAY, from, until, PINK, "C18-04");
  }
}
