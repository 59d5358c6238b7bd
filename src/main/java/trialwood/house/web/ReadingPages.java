package trialwood.house.web;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.RequestMapping;
import trialwood.house.House;
import trialwood.house.HouseReading;
import trialwood.house.HouseReadings;
import trialwood.house.NewReading;
import trialwood.web.Entry;
import trialwood.web.Instead;
import trialwood.web.Questions;

/** Writing down temperatures and mist, or correcting what was written. */
@Controller
@RequestMapping("/houses/{name}/reading")
class ReadingPages extends LogPages<ReadingPages.ReadingForm> {

  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  private final HouseDesk desk;
  private final HouseReadings readings;

  ReadingPages(HouseDesk desk, HouseReadings readings) {
    super(desk, "house/reading");
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
      implements LogForm {

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

    @Override
    public void record(House house, HouseDesk desk) {
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
      Instead instead = Instead.read(entry, corrects, supersedeReason);
      entry.orRefuse();
      Questions questions = new Questions(asked, checked);
      questions.ask(HouseReading.questions(house, said));
      desk.log().reading(house, said, questions.orAsk(), instead, person);
    }
  }

  @Override
  ReadingForm fresh() {
    return ReadingForm.fresh(desk);
  }

  @Override
  Optional<ReadingForm> correcting(UUID entry, House house) {
    return readings
        .findById(entry)
        .filter(it -> it.houseId().equals(house.id()))
        .map(it -> ReadingForm.correcting(it, desk));
  }
}
