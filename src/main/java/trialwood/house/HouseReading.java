package trialwood.house;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.CorrectableFact;
import trialwood.record.Problem;
import trialwood.record.Recorded;

/**
 * Temperatures, humidity, shade and mist of a house at a moment. What is refused and what is asked
 * about in a house where cuttings stand is common practice, no source.
 */
@Entity
public class HouseReading extends CorrectableFact {

  private UUID houseId;
  private Instant readAt;
  private @Nullable BigDecimal airCelsius;
  private @Nullable BigDecimal mediumCelsius;
  private @Nullable Integer humidity;
  private @Nullable Integer shade;
  private @Nullable Integer mistSeconds;
  private @Nullable Integer mistIntervalSeconds;
  private @Nullable String note;
  @Embedded private @Nullable Checked checked;

  HouseReading(House house, NewReading said, @Nullable Checked checked, Recorded recorded) {
    super(recorded);
    this.houseId = Objects.requireNonNull(house.id());
    int coldest = house.propagates() ? 0 : -40;
    int hottest = house.propagates() ? 50 : 60;
    Check.that()
        .holds(said.saysSomething(), "airCelsius", "Write at least one value.")
        .holds(
            !said.readAt().isAfter(recorded.recordedAt()),
            "readAt",
            "This is still to come. Write down what has been read.")
        .holds(within(said.airCelsius(), coldest, hottest), "airCelsius", range(coldest, hottest))
        .holds(
            within(said.mediumCelsius(), coldest, hottest),
            "mediumCelsius",
            range(coldest, hottest))
        .holds(within(said.humidity()), "humidity", "Humidity runs from 0 to 100 %.")
        .holds(within(said.shade()), "shade", "Shade runs from 0 to 100 %.")
        .holds(
            (said.mistSeconds() == null) == (said.mistIntervalSeconds() == null),
            said.mistSeconds() == null ? "mistSeconds" : "mistEvery",
            "Mist needs both: how long it runs, and how often.")
        .holds(
            said.mistSeconds() == null || said.mistSeconds() > 0,
            "mistSeconds",
            "Leave both boxes empty where there is no mist.")
        .holds(
            said.mistSeconds() == null
                || said.mistIntervalSeconds() == null
                || said.mistIntervalSeconds() > said.mistSeconds(),
            "mistSeconds",
            "The mist cannot run longer than from one start to the next.")
        .holds(
            said.mistIntervalSeconds() == null || said.mistIntervalSeconds() <= 86_400,
            "mistEvery",
            "A day is the longest interval.")
        .fits(said.note(), 300, "note")
        .orRefuse();
    this.readAt = said.readAt();
    this.airCelsius = said.airCelsius();
    this.mediumCelsius = said.mediumCelsius();
    this.humidity = said.humidity();
    this.shade = said.shade();
    this.mistSeconds = said.mistSeconds();
    this.mistIntervalSeconds = said.mistIntervalSeconds();
    this.note = said.note();
    this.checked = checked;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected HouseReading() {}

  /** What is unusual where cuttings stand. */
  public static List<Problem> questions(House house, NewReading said) {
    List<Problem> unusual = new ArrayList<>();
    if (!house.propagates()) {
      return unusual;
    }
    if (!within(said.mediumCelsius(), 16, 29)) {
      unusual.add(
          new Problem(
              "mediumCelsius", "Cuttings mostly stand at 16 to 29 °C. Is this what you read?"));
    }
    if (said.airCelsius() != null && said.airCelsius().compareTo(BigDecimal.valueOf(38)) > 0) {
      unusual.add(new Problem("airCelsius", "Above 38 °C cuttings scorch. Is this what you read?"));
    }
    return unusual;
  }

  HouseReading insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  private static String range(int coldest, int hottest) {
    return "Temperatures here run from %d to %d °C.".formatted(coldest, hottest);
  }

  private static boolean within(@Nullable BigDecimal degrees, int low, int high) {
    return degrees == null
        || degrees.compareTo(BigDecimal.valueOf(low)) >= 0
            && degrees.compareTo(BigDecimal.valueOf(high)) <= 0;
  }

  private static boolean within(@Nullable Integer percent) {
    return percent == null || percent >= 0 && percent <= 100;
  }

  public UUID houseId() {
    return houseId;
  }

  public Instant readAt() {
    return readAt;
  }

  public @Nullable BigDecimal airCelsius() {
    return airCelsius;
  }

  public @Nullable BigDecimal mediumCelsius() {
    return mediumCelsius;
  }

  public @Nullable Integer humidity() {
    return humidity;
  }

  public @Nullable Integer shade() {
    return shade;
  }

  public @Nullable Integer mistSeconds() {
    return mistSeconds;
  }

  public @Nullable Integer mistIntervalSeconds() {
    return mistIntervalSeconds;
  }

  public @Nullable String note() {
    return note;
  }

  public @Nullable Checked checked() {
    return checked;
  }
}
