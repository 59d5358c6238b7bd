package trialwood.season;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarOutputter;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.Description;
import net.fortuna.ical4j.model.property.DtEnd;
import net.fortuna.ical4j.model.property.DtStamp;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Location;
import net.fortuna.ical4j.model.property.ProdId;
import net.fortuna.ical4j.model.property.Summary;
import net.fortuna.ical4j.model.property.Uid;
import net.fortuna.ical4j.model.property.Url;
import net.fortuna.ical4j.model.property.XProperty;
import net.fortuna.ical4j.model.property.immutable.ImmutableCalScale;
import net.fortuna.ical4j.model.property.immutable.ImmutableTransp;
import net.fortuna.ical4j.model.property.immutable.ImmutableVersion;
import trialwood.evidence.WorkState;

/**
 * A work list as an iCalendar object (RFC 5545): one event over the whole day for all work of a
 * kind that is due at a place on a day. Late work stands on the day the list is of, missed work is
 * left out. It names the labels that people need to find the work and nothing that was counted.
 *
 * @param name of the calendar
 * @param stamp when the list was drawn up
 * @param root address of the application, without a slash at its end
 */
record WorkCalendar(String name, WorkList list, Instant stamp, String root) {

  private static final int NEVER_FOLD = 100_000;

  /** Its text, lines folded and ended as the standard says. */
  String text() {
    Calendar calendar = new Calendar();
    calendar.add(new ProdId("-//Trialwood//Work lists//EN"));
    calendar.add(ImmutableVersion.VERSION_2_0);
    calendar.add(ImmutableCalScale.GREGORIAN);
    calendar.add(new XProperty("X-WR-CALNAME", name));
    rounds().forEach(round -> calendar.add(event(round)));
    StringWriter text = new StringWriter();
    try {
      new CalendarOutputter(false, NEVER_FOLD).output(calendar, text);
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return FoldedLines.of(text.toString());
  }

  private List<List<Task>> rounds() {
    Map<List<Object>, List<Task>> rounds = new LinkedHashMap<>();
    for (Task task : list.tasks()) {
      if (task.state() != WorkState.MISSED) {
        rounds.computeIfAbsent(what(task), none -> new ArrayList<>()).add(task);
      }
    }
    return List.copyOf(rounds.values());
  }

  /** What stays the same about a round while people get on with it. */
  private static List<Object> what(Task task) {
    return List.of(
        task.work().place().toLowerCase(Locale.ROOT), task.work().kind().key(), task.work().due());
  }

  private VEvent event(List<Task> round) {
    Task first = round.get(0);
    LocalDate day = day(first);
    VEvent event = new VEvent(false);
    event.add(
        new Uid(
            UUID.nameUUIDFromBytes(what(first).toString().getBytes(StandardCharsets.UTF_8))
                .toString()));
    event.add(new DtStamp(stamp));
    event.add(new DtStart<>(day));
    event.add(new DtEnd<>(day.plusDays(1)));
    event.add(new Summary(summary(round)));
    event.add(new Location(first.work().place()));
    event.add(new Description(description(round)));
    event.add(new Url(URI.create(root + address(round))));
    // whoever works all day is not busy for it
    event.add(ImmutableTransp.TRANSPARENT);
    return event;
  }

  private LocalDate day(Task task) {
    if (task.state() == WorkState.COMING) {
      return task.work().from();
    }
    return task.work().due().isBefore(list.today()) ? list.today() : task.work().due();
  }

  private static String summary(List<Task> round) {
    Task first = round.get(0);
    String what =
        round.size() == 1
            ? first.work().what()
            : "%s: %d".formatted(first.work().kind().label(), round.size());
    return switch (first.state()) {
      case OVERDUE -> "Overdue: " + what;
      case BLOCKED -> "Blocked: " + what;
      default -> what;
    };
  }

  private static String description(List<Task> round) {
    return round.stream()
        .map(
            task ->
                task.work().blockedBy() == null
                    ? task.work().what()
                    : task.work().what() + " (" + task.work().blockedBy() + ")")
        .collect(Collectors.joining("\n"));
  }

  private static String address(List<Task> round) {
    Task first = round.get(0);
    if (round.size() == 1) {
      return Objects.requireNonNullElse(first.href(), "/");
    }
    return "/?who=everyone&kind=%s&place=%s"
        .formatted(
            first.work().kind().key(),
            URLEncoder.encode(first.work().place(), StandardCharsets.UTF_8));
  }
}
