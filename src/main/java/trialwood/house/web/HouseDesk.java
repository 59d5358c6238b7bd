package trialwood.house.web;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.house.House;
import trialwood.house.HouseLog;
import trialwood.house.Houses;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.record.CodeKey;
import trialwood.web.Entry;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** What every form of a house works with. */
@Component
record HouseDesk(Houses houses, HouseLog log, Persons persons, Forms forms, Clock clock) {

  private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("HH:mm");

  House house(String name) {
    return houses.findByNameKey(CodeKey.of(name)).orElseThrow(NotFound.of("house " + name));
  }

  List<Person> people() {
    return persons.findByActiveTrueOrderByInitials();
  }

  LocalDate today() {
    return LocalDate.now(clock);
  }

  String todayTyped() {
    return today().toString();
  }

  /** The time of day, to the minute, as it opens in a form. */
  String nowTyped() {
    return HOUR.format(LocalTime.now(clock));
  }

  String dayTyped(Instant moment) {
    return moment.atZone(clock.getZone()).toLocalDate().toString();
  }

  String hourTyped(Instant moment) {
    return HOUR.format(moment.atZone(clock.getZone()));
  }

  /** A day and a time of day by the nursery's clock; two problems where neither can be read. */
  Instant moment(
      Entry entry, String dayBox, @Nullable String day, String timeBox, @Nullable String time) {
    LocalDate on = entry.day(dayBox, day, today());
    LocalTime at = entry.time(timeBox, time);
    return on.atTime(at).atZone(clock.getZone()).toInstant().truncatedTo(ChronoUnit.MINUTES);
  }

  static <T> T found(Optional<T> entry) {
    return entry.orElseThrow(NotFound.of("such entry"));
  }
}
