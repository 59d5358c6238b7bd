package trialwood.observation;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** One trait value on one unit on one day, in the trait's unit. */
@Entity
public class Observation extends CorrectableFact {

  /** Figures, as the colour charts of the trade write them, perhaps behind an N or two. */
  private static final Pattern CHART_COLOUR = Pattern.compile("N{0,2}\\d.*");

  /** A sheet, one of its patches A to D, and the year of the chart. */
  private static final Pattern PATCH = Pattern.compile("N{0,2}\\d{1,3}[A-D] (19|20)\\d\\d");

  private UUID unitId;
  private UUID traitId;
  private LocalDate onDate;
  private @Nullable BigDecimal numberValue;
  private @Nullable LocalDate dateValue;
  private @Nullable String textValue;

  @Enumerated(EnumType.STRING)
  private @Nullable NoneBecause noneBecause;

  private @Nullable String note;

  /**
   * @throws trialwood.record.Refused when the reading is of the wrong kind or impossible for the
   *     trait
   */
  public Observation(
      UUID unitId,
      Trait trait,
      LocalDate onDate,
      Reading reading,
      @Nullable String note,
      Recorded recorded) {
    super(recorded);
    this.unitId = unitId;
    this.traitId = Objects.requireNonNull(trait.id());
    this.onDate = onDate;
    this.numberValue = reading.number();
    this.dateValue = reading.day();
    this.textValue = reading.text();
    this.noneBecause = reading.noneBecause();
    this.note = note;
    Check.that()
        .holds(
            reading.noneBecause() != null || isOfItsKind(reading, trait.kind()),
            "value",
            "%s is recorded as a %s.".formatted(trait.name(), trait.kind().word()))
        .holds(
            reading.text() == null
                || trait.kind() != TraitKind.COLOUR
                || !CHART_COLOUR.matcher(reading.text()).matches()
                || PATCH.matcher(reading.text()).matches(),
            "value",
            "A chart colour is a sheet, a patch A to D and the year of the edition: 84B 2015.")
        .holds(
            reading.number() == null || trait.admits(reading.number()),
            "value",
            "%s runs from %s to %s %s; this says %s."
                .formatted(
                    trait.name(),
                    plain(trait.lowest()),
                    plain(trait.highest()),
                    Objects.requireNonNullElse(trait.unit(), ""),
                    plain(reading.number())))
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Observation() {}

  /** Says that it takes the place of an earlier one; both stay readable. */
  public Observation insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  private static boolean isOfItsKind(Reading reading, TraitKind kind) {
    return switch (kind) {
      case MEASUREMENT -> reading.number() != null;
      case SCORE, COUNT ->
          reading.number() != null && reading.number().stripTrailingZeros().scale() <= 0;
      case DATE -> reading.day() != null;
      case COLOUR, TEXT -> reading.text() != null;
    };
  }

  private static String plain(@Nullable BigDecimal number) {
    return number == null ? "any number" : number.stripTrailingZeros().toPlainString();
  }

  /**
   * Puts this record in the place of an earlier one of the same unit, trait and day.
   *
   * @throws trialwood.record.Refused without a reason
   */
  public Observation insteadOf(Observation earlier, String reason) {
    Check.that()
        .holds(
            unitId.equals(earlier.unitId)
                && traitId.equals(earlier.traitId)
                && onDate.equals(earlier.onDate),
            "value",
            "A value takes the place of one of the same plant, trait and day.")
        .holds(reason.length() <= 300, "reason", "Keep the reason under 300 letters.")
        .holds(!reason.isBlank(), "reason", "Say why the earlier value is replaced.")
        .orRefuse();
    supersede(Objects.requireNonNull(earlier.id()), reason);
    return this;
  }

  public UUID unitId() {
    return unitId;
  }

  public UUID traitId() {
    return traitId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Reading reading() {
    return new Reading(numberValue, dateValue, textValue, noneBecause);
  }

  public @Nullable String note() {
    return note;
  }
}
