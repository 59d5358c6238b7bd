package trialwood.crop;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A kind of plant that the nursery breeds, with the settings its stages need. */
@Entity
@Audited
public class Crop {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String code;
  private String botanicalName;
  private String commonName;
  private boolean woody;
  private int rootingFromDays;
  private int rootingToDays;
  private LookDays lookDays;
  private int checkFloorPercent;
  private @Nullable String denominationClass;
  private @Nullable BigDecimal rootKillCelsius;

  /**
   * @param rootingFromDays first day after sticking on which cuttings are expected to be rooted
   * @param rootingToDays last day of that expectation
   * @param checkFloorPercent the bench check rooted below this voids a run for discards
   */
  public Crop(
      String code,
      String botanicalName,
      String commonName,
      boolean woody,
      int rootingFromDays,
      int rootingToDays,
      LookDays lookDays,
      int checkFloorPercent,
      @Nullable String denominationClass) {
    this.code = code.strip();
    Check.that()
        .holds(!this.code.isEmpty(), "crop", "Give the crop a short code.")
        .isPlain(this.code, "crop")
        .orRefuse();
    describe(
        botanicalName,
        commonName,
        woody,
        rootingFromDays,
        rootingToDays,
        lookDays,
        checkFloorPercent,
        denominationClass);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Crop() {}

  /** Changes what is said of the crop and what its stages expect; its code stays. */
  public void describe(
      String botanicalName,
      String commonName,
      boolean woody,
      int rootingFromDays,
      int rootingToDays,
      LookDays lookDays,
      int checkFloorPercent,
      @Nullable String denominationClass) {
    Check.that()
        .holds(!botanicalName.isBlank(), "botanical_name", "Give the botanical name.")
        .fits(botanicalName.strip(), 120, "botanical_name")
        .holds(!commonName.isBlank(), "common_name", "Say what people call it.")
        .fits(commonName.strip(), 80, "common_name")
        .holds(rootingFromDays > 0, "rooting_from_days", "Rooting takes at least one day.")
        .holds(
            rootingToDays >= rootingFromDays,
            "rooting_to_days",
            "The last rooting day comes before the first.")
        .fits(lookDays.toString(), 120, "look_days")
        .holds(
            checkFloorPercent >= 0 && checkFloorPercent <= 100,
            "check_floor_percent",
            "The check's floor is a percentage from 0 to 100.")
        .fits(denominationClass, 80, "denomination_class")
        .orRefuse();
    this.botanicalName = botanicalName.strip();
    this.commonName = commonName.strip();
    this.woody = woody;
    this.rootingFromDays = rootingFromDays;
    this.rootingToDays = rootingToDays;
    this.lookDays = lookDays;
    this.checkFloorPercent = checkFloorPercent;
    this.denominationClass = denominationClass;
  }

  /**
   * Says below which temperature of the medium its roots die in a pot; they are far more tender
   * than its stems.
   *
   * @param celsius absent where nobody knows it
   */
  public void rootsDieBelow(@Nullable BigDecimal celsius) {
    Check.that()
        .holds(
            celsius == null || celsius.abs().compareTo(new BigDecimal("60")) <= 0,
            "root_kill_celsius",
            "Write degrees Celsius, for example -5.")
        .orRefuse();
    this.rootKillCelsius = celsius;
  }

  /** Temperature of the medium below which roots die in a pot. */
  public @Nullable BigDecimal rootKillCelsius() {
    return rootKillCelsius;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String code() {
    return code;
  }

  public String botanicalName() {
    return botanicalName;
  }

  public String commonName() {
    return commonName;
  }

  /** Woody crops have the longer novelty period abroad where an office counts them as trees. */
  public boolean isWoody() {
    return woody;
  }

  public int rootingFromDays() {
    return rootingFromDays;
  }

  public int rootingToDays() {
    return rootingToDays;
  }

  public LookDays lookDays() {
    return lookDays;
  }

  public int checkFloorPercent() {
    return checkFloorPercent;
  }

  public @Nullable String denominationClass() {
    return denominationClass;
  }
}
