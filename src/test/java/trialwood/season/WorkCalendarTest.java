package trialwood.season;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trialwood.evidence.DueWork;
import trialwood.evidence.WorkKind;
import trialwood.people.Role;

/** What is written by one library is read by another, which shares no code with it. */
class WorkCalendarTest {

  private static final LocalDate TODAY = LocalDate.of(2026, 6, 15);
  private static final Instant STAMP = Instant.parse("2026-06-15T04:00:00Z");
  private static final WorkKind LOOKS = new WorkKind("looks", "Looks at trays", Role.BENCH, 7);
  private static final String PLACE = "Überwinterungshaus Süd; Tisch 2, links \\ hinten 🌱";

  @Test
  void commas_semicolons_umlauts_and_line_breaks_come_out_as_they_went_in() {
    VEvent event = only(look(PLACE, TODAY, "T;1,a"), look(PLACE, TODAY, "T2 „ä“"));
    assertThat(event.getSummary().getValue()).isEqualTo("Looks at trays: 2");
    assertThat(event.getLocation().getValue()).isEqualTo(PLACE);
    assertThat(event.getDescription().getValue()).isEqualTo("Look at T;1,a\nLook at T2 „ä“");
    assertThat(event.getUrl().getValue())
        .startsWith("https://n.example/?who=everyone&kind=looks&place=%C3%9Cberwinterungshaus");
  }

  /** RFC 5545, section 3.1: at most 75 octets a line, the line break not counted. */
  @Test
  void no_line_is_longer_than_75_octets_and_none_is_broken_within_a_letter() {
    DueWork[] many =
        IntStream.range(0, 60)
            .mapToObj(n -> look(PLACE, TODAY, "äöü🌱" + n))
            .toArray(DueWork[]::new);
    String text = text(many);
    assertThat(text.split("\r\n"))
        .hasSizeGreaterThan(20)
        .allSatisfy(
            line -> assertThat(line.getBytes(StandardCharsets.UTF_8)).hasSizeLessThanOrEqualTo(75));
    assertThat(text).doesNotContain("?1\r").endsWith("END:VCALENDAR\r\n");
    assertThat(read(text).getEvents().get(0).getDescription().getValue())
        .isEqualTo(String.join("\n", Stream.of(many).map(DueWork::what).toList()));
  }

  @Test
  void work_stands_on_its_whole_day_and_keeps_nobody_busy() {
    VEvent event = only(look("B1", TODAY.plusDays(2), "1"));
    assertThat(event.getDateStart().getValue().hasTime()).isFalse();
    assertThat(day(event)).isEqualTo("2026-06-17");
    assertThat(event.getDateEnd().getValue().getRawComponents().getDate()).isEqualTo(18);
    assertThat(event.getDateTimeStamp().getValue()).isEqualTo("2026-06-15T04:00:00Z");
    assertThat(event.getTransparency().isTransparent()).isTrue();
    assertThat(event.getSummary().getValue()).isEqualTo("Look at 1");
    assertThat(event.getUrl().getValue()).isEqualTo("https://n.example/bench/trays/1/look");
  }

  @Test
  void late_work_stands_on_today_and_missed_work_nowhere() {
    VEvent event = only(look("B1", TODAY.minusDays(3), "1"), look("B1", TODAY.minusDays(30), "2"));
    assertThat(day(event)).isEqualTo("2026-06-15");
    assertThat(event.getSummary().getValue()).isEqualTo("Overdue: Look at 1");
  }

  @Test
  void what_keeps_people_out_is_said() {
    VEvent event = only(look("B1", TODAY, "1").blockedBy("closed until 14:00 after a spray"));
    assertThat(event.getSummary().getValue()).isEqualTo("Blocked: Look at 1");
    assertThat(event.getDescription().getValue())
        .isEqualTo("Look at 1 (closed until 14:00 after a spray)");
  }

  @Test
  void a_round_keeps_its_identity_while_trays_are_done_and_days_go_by() {
    String today = only(look("B1", TODAY, "1"), look("B1", TODAY, "2")).getUid().getValue();
    String afterOne = only(look("B1", TODAY, "2")).getUid().getValue();
    String tomorrow = events(TODAY.plusDays(1), look("B1", TODAY, "2")).get(0).getUid().getValue();
    assertThat(today).isEqualTo(afterOne).isEqualTo(tomorrow);
    assertThat(only(look("B2", TODAY, "1")).getUid().getValue()).isNotEqualTo(today);
    assertThat(only(look("B1", TODAY.plusDays(1), "1")).getUid().getValue()).isNotEqualTo(today);
  }

  @Test
  void the_reader_finds_nothing_against_the_standard() {
    ICalendar calendar = read(text(look(PLACE, TODAY, "1"), look("B1", TODAY.plusDays(9), "2")));
    assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).isTrue();
    assertThat(calendar.getProductId().getValue()).isEqualTo("-//Trialwood//Work lists//EN");
    assertThat(calendar.getEvents()).hasSize(2);
  }

  private static String day(VEvent event) {
    return LocalDateTime.ofInstant(
            event.getDateStart().getValue().toInstant(), ZoneId.systemDefault())
        .toLocalDate()
        .toString();
  }

  private static VEvent only(DueWork... works) {
    List<VEvent> events = events(TODAY, works);
    assertThat(events).hasSize(1);
    return events.get(0);
  }

  private static List<VEvent> events(LocalDate today, DueWork... works) {
    return read(text(today, works)).getEvents();
  }

  private static ICalendar read(String text) {
    return Biweekly.parse(text).first();
  }

  private static String text(DueWork... works) {
    return text(TODAY, works);
  }

  private static String text(LocalDate today, DueWork... works) {
    List<Task> tasks =
        Stream.of(works).map(work -> new Task(work, work.state(today), work.href())).toList();
    return new WorkCalendar(
            "Trialwood, Süd", new WorkList(today, tasks), STAMP, "https://n.example")
        .text();
  }

  private static DueWork look(String place, LocalDate due, String tray) {
    return LOOKS.at(place, due, "Look at " + tray, "day 7", "/bench/trays/" + tray + "/look");
  }
}
