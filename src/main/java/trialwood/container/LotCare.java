package trialwood.container;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.record.Checked;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** A pinch, a pruning, or the beginning or end of a lot's winter under cover. */
@Entity
public class LotCare extends CorrectableFact {

  private static final BigDecimal TALLEST = new BigDecimal("600");
  private static final BigDecimal DEGREES = new BigDecimal("60");

  private UUID lotId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private CareKind kind;

  private @Nullable BigDecimal cutToCm;
  private @Nullable String house;
  private @Nullable BigDecimal lowestCelsius;
  private @Nullable Integer diebackPercent;
  @Embedded private @Nullable Checked checked;

  LotCare(Lot lot, NewCare care, @Nullable Checked checked, Recorded recorded) {
    super(recorded);
    this.lotId = lot.unitId();
    this.onDate = care.on();
    this.kind = care.kind();
    this.cutToCm = care.cutToCm();
    this.house = care.house();
    this.lowestCelsius = care.lowestCelsius();
    this.diebackPercent = care.diebackPercent();
    this.checked = checked;
    lot.since(onDate)
        .holds(
            cutToCm == null || (cutToCm.signum() > 0 && cutToCm.compareTo(TALLEST) <= 0),
            "cutToCm",
            "A shrub is cut to more than 0 and at most 600 cm.")
        .holds(
            kind.isCut() || cutToCm == null,
            "cutToCm",
            "Only a pinch or a pruning cuts to a height.")
        .holds(
            kind != CareKind.COVERED || (house != null && !house.isBlank()),
            "house",
            "Say in which house or under what they stand.")
        .fits(house, 80, "house")
        .holds(
            lowestCelsius == null || lowestCelsius.abs().compareTo(DEGREES) <= 0,
            "lowestCelsius",
            "No medium gets that cold or warm; write degrees Celsius.")
        .holds(
            diebackPercent == null || (diebackPercent >= 0 && diebackPercent <= 100),
            "diebackPercent",
            "Dieback runs from 0 to 100 percent of the stems' length.")
        .holds(
            kind == CareKind.UNCOVERED
                || Stream.of(lowestCelsius, diebackPercent).allMatch(it -> it == null),
            "kind",
            "The winter's lowest temperature and dieback are known when the lot is uncovered.")
        .orRefuse();
  }

  LotCare insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotCare() {}

  public UUID lotId() {
    return lotId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public CareKind kind() {
    return kind;
  }

  public @Nullable BigDecimal cutToCm() {
    return cutToCm;
  }

  public @Nullable String house() {
    return house;
  }

  public @Nullable BigDecimal lowestCelsius() {
    return lowestCelsius;
  }

  public @Nullable Integer diebackPercent() {
    return diebackPercent;
  }

  /** What was unusual and asked about, with the answer. */
  public @Nullable Checked checked() {
    return checked;
  }
}
