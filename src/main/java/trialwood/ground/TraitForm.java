package trialwood.ground;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.Window;
import trialwood.unit.UnitKind;
import trialwood.web.EditForm;
import trialwood.web.Entry;
import trialwood.web.Typed;

/**
 * What is said of a trait, but for its kind and unit.
 *
 * @param windowFrom first day of the year on which it can be seen, like 15 Apr
 * @param takenOn kinds of units, in small letters
 */
record TraitForm(
    @Nullable UUID formKey,
    @Nullable Integer version,
    @Nullable String name,
    @Nullable String lowest,
    @Nullable String highest,
    @Nullable String decimals,
    @Nullable Better better,
    @Nullable String windowFrom,
    @Nullable String windowUntil,
    @Nullable String youngestAge,
    @Nullable Set<String> takenOn,
    @Nullable String part,
    @Nullable Boolean described)
    implements EditForm {

  static final List<String> UNIT_KINDS = Arrays.stream(UnitKind.values()).map(Boxes::word).toList();

  /** A year that has every day of the year. */
  private static final LocalDate LEAP_YEAR = LocalDate.of(2024, 1, 1);

  TraitForm {
    takenOn = takenOn == null ? Set.of() : Set.copyOf(takenOn);
  }

  static TraitForm of(Trait trait) {
    Optional<Window> window = Optional.ofNullable(trait.window());
    return new TraitForm(
        UUID.randomUUID(),
        trait.version(),
        trait.name(),
        Boxes.number(trait.lowest()),
        Boxes.number(trait.highest()),
        String.valueOf(trait.decimals()),
        trait.better(),
        Boxes.day(window.map(Window::from).orElse(null)),
        Boxes.day(window.map(Window::until).orElse(null)),
        trait.youngestAge(),
        trait.takenOn(),
        trait.part(),
        trait.isDescribed());
  }

  @Override
  public Map<String, String> words() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put("Name", Boxes.text(name));
    words.put("Lowest possible", Boxes.text(lowest));
    words.put("Highest possible", Boxes.text(highest));
    words.put("Decimals", Boxes.text(decimals));
    words.put("Better is", better == null ? "" : Boxes.word(better));
    words.put("Can be seen from", Boxes.text(windowFrom));
    words.put("Can be seen until", Boxes.text(windowUntil));
    words.put("Youngest age, years", Boxes.text(youngestAge));
    words.put("Taken on", String.join(", ", UNIT_KINDS.stream().filter(this::isTakenOn).toList()));
    words.put("Part of the plant", Boxes.text(part));
    words.put("In the description", Boxes.yesNo(described));
    return words;
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read or cannot be, or somebody else
   *     was faster
   */
  void change(Trait trait) {
    sees(trait.version());
    Entry entry = new Entry();
    BigDecimal least = entry.decimalIfAny("lowest", lowest);
    BigDecimal most = entry.decimalIfAny("highest", highest);
    int places = entry.count("decimals", decimals);
    Window window = window(entry);
    if (better == null) {
      entry.wrong("better", "Say which way it is better; neither is an answer.");
    }
    if (!UNIT_KINDS.containsAll(kinds())) {
      entry.wrong("takenOn", "Choose from the kinds of units that are offered.");
    }
    entry.orRefuse();
    trait.describe(
        Boxes.text(name),
        least,
        most,
        places,
        better == null ? Better.NEITHER : better,
        window,
        Entry.wordsIfAny(youngestAge),
        kinds(),
        Entry.wordsIfAny(part),
        Boolean.TRUE.equals(described));
  }

  private @Nullable Window window(Entry entry) {
    MonthDay from = day(entry, "windowFrom", windowFrom);
    MonthDay until = day(entry, "windowUntil", windowUntil);
    if (Boxes.text(windowFrom).isEmpty() != Boxes.text(windowUntil).isEmpty()) {
      entry.wrong("windowUntil", "A window has a first and a last day, or neither.");
    }
    return from == null || until == null ? null : new Window(from, until);
  }

  private static @Nullable MonthDay day(Entry entry, String field, @Nullable String typed) {
    String text = Boxes.text(typed);
    Optional<MonthDay> day = Typed.date(text, LEAP_YEAR).map(MonthDay::from);
    if (day.isEmpty() && !text.isEmpty()) {
      entry.wrong(field, "Type a day of the year like 15 Apr.");
    }
    return day.orElse(null);
  }

  private boolean isTakenOn(String kind) {
    return kinds().contains(kind);
  }

  private Set<String> kinds() {
    return takenOn == null ? Set.of() : takenOn;
  }
}
