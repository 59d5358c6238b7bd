package trialwood.house.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.house.House;
import trialwood.house.HouseLog;
import trialwood.house.HouseReading;
import trialwood.house.HouseReadings;
import trialwood.house.NewReading;
import trialwood.people.Person;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Questions;

/** Writing down temperatures and mist, or correcting what was written. */
@Controller
@RequestMapping("/houses/{name}/reading")
class ReadingPages {

  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  private final HouseDesk desk;
  private final HouseReadings readings;

  ReadingPages(HouseDesk desk, HouseReadings readings) {
    this.desk = desk;
    this.readings = readings;
  }

  record ReadingForm(
      @Nullable UUID formKey,
      @Nullable String on,
      @Nullable String readAt,
      @Nullable String airCelsius,
      @Nullable String mediumCelsius,
      @Nullable String humidity,
      @Nullable String shade,
      @Nullable String mistSeconds,
      @Nullable String mistEvery,
      @Nullable String note,
      @Nullable String by,
      @Nullable UUID corrects,
      @Nullable String supersedeReason,
      @Nullable String asked,
      @Nullable String checked)
      implements Form {

    static ReadingForm fresh(HouseDesk desk) {
      return new ReadingForm(
          UUID.randomUUID(),
          desk.todayTyped(),
          desk.nowTyped(),
          "",
          "",
          "",
          "",
          "",
          "",
          "",
          null,
          null,
          null,
          null,
          null);
    }

    static ReadingForm correcting(HouseReading reading, HouseDesk desk) {
      return new ReadingForm(
          UUID.randomUUID(),
          desk.dayTyped(reading.readAt()),
          desk.hourTyped(reading.readAt()),
          Objects.toString(reading.airCelsius(), ""),
          Objects.toString(reading.mediumCelsius(), ""),
          Objects.toString(reading.humidity(), ""),
          Objects.toString(reading.shade(), ""),
          Objects.toString(reading.mistSeconds(), ""),
          minutes(reading.mistIntervalSeconds()),
          reading.note(),
          Objects.toString(reading.recorded().personId(), null),
          reading.id(),
          "",
          null,
          null);
    }

    private static String minutes(@Nullable Integer seconds) {
      return seconds == null
          ? ""
          : BigDecimal.valueOf(seconds)
              .divide(SIXTY, 4, RoundingMode.HALF_UP)
              .stripTrailingZeros()
              .toPlainString();
    }

    void record(House house, HouseDesk desk) {
      Entry entry = new Entry();
      BigDecimal every = entry.decimalIfAny("mistEvery", mistEvery);
      NewReading said =
          new NewReading(
              desk.moment(entry, "on", on, "readAt", readAt),
              entry.decimalIfAny("airCelsius", airCelsius),
              entry.decimalIfAny("mediumCelsius", mediumCelsius),
              entry.countIfAny("humidity", humidity),
              entry.countIfAny("shade", shade),
              entry.countIfAny("mistSeconds", mistSeconds),
              every == null ? null : every.multiply(SIXTY).intValue(),
              Entry.wordsIfAny(note));
      UUID person = entry.person("by", by);
      HouseLog.Instead instead = HouseDesk.instead(entry, corrects, supersedeReason);
      entry.orRefuse();
      Questions questions = new Questions(asked, checked);
      questions.ask(HouseReading.questions(house, said));
      desk.log().reading(house, said, questions.orAsk(), instead, person);
    }
  }

  @ModelAttribute("house")
  House house(@PathVariable String name) {
    return desk.house(name);
  }

  @ModelAttribute("people")
  List<Person> people() {
    return desk.people();
  }

  @GetMapping
  @ForBench
  String open(
      @ModelAttribute("house") House house, @RequestParam Optional<UUID> corrects, Model page) {
    page.addAttribute(
        "form",
        corrects
            .map(
                id ->
                    ReadingForm.correcting(
                        HouseDesk.found(
                            readings.findById(id).filter(s -> s.houseId().equals(house.id()))),
                        desk))
            .orElseGet(() -> ReadingForm.fresh(desk)));
    return "house/reading";
  }

  @PostMapping
  @ForBench
  String store(
      @ModelAttribute("house") House house,
      @ModelAttribute("form") @Nullable ReadingForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!desk.forms().store(form, said, () -> Objects.requireNonNull(form).record(house, desk))) {
      return "house/reading";
    }
    next.addFlashAttribute("status", "Written into the log of " + house.name() + ".");
    next.addAttribute("house", house.name());
    return "redirect:/houses/{house}";
  }
}
