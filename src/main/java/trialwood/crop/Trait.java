package trialwood.crop;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** Something that can be seen or measured on a plant of a crop. */
@Entity
@Audited
public class Trait {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private UUID cropId;
  private String code;
  private String name;

  @Enumerated(EnumType.STRING)
  private TraitKind kind;

  private @Nullable String unit;
  private @Nullable BigDecimal lowest;
  private @Nullable BigDecimal highest;
  private int decimals;

  @Enumerated(EnumType.STRING)
  private Better better;

  @Embedded private @Nullable Window window;
  private @Nullable String youngestAge;

  @Column(name = "taken_on")
  private String takenOn;

  private @Nullable String part;
  private boolean described;

  /**
   * @param lowest smallest possible value, in the trait's unit
   * @param highest largest possible value, in the trait's unit
   * @param window the days of the year in which the value is honest
   * @param takenOn kinds of units it is taken on: position, tray, lot, plant, plot, stock
   * @param described whether it belongs to the description in the dossier
   */
  public Trait(
      UUID cropId,
      String code,
      String name,
      TraitKind kind,
      @Nullable String unit,
      @Nullable BigDecimal lowest,
      @Nullable BigDecimal highest,
      int decimals,
      Better better,
      @Nullable Window window,
      @Nullable String youngestAge,
      Set<String> takenOn,
      @Nullable String part,
      boolean described) {
    this.cropId = cropId;
    this.code = code.strip();
    this.kind = kind;
    this.unit = unit;
    Check.that()
        .holds(!this.code.isEmpty(), "trait", "Give the trait a short code.")
        .isPlain(this.code, "trait")
        .orRefuse();
    describe(
        name, lowest, highest, decimals, better, window, youngestAge, takenOn, part, described);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Trait() {}

  /**
   * Changes what is said of the trait. Code, kind and unit give its recorded values their meaning
   * and stay.
   */
  public void describe(
      String name,
      @Nullable BigDecimal lowest,
      @Nullable BigDecimal highest,
      int decimals,
      Better better,
      @Nullable Window window,
      @Nullable String youngestAge,
      Set<String> takenOn,
      @Nullable String part,
      boolean described) {
    Check.that()
        .holds(!name.isBlank(), "name", "Say what people call the trait.")
        .fits(name.strip(), 80, "name")
        .holds(isKept(lowest), "lowest", "At most 8 digits before the point and 4 after it.")
        .holds(isKept(highest), "highest", "At most 8 digits before the point and 4 after it.")
        .holds(
            lowest == null || highest == null || lowest.compareTo(highest) <= 0,
            "lowest",
            "The lowest possible value is above the highest.")
        .holds(decimals >= 0 && decimals <= 6, "decimals", "Decimals run from 0 to 6.")
        .holds(!takenOn.isEmpty(), "taken_on", "Say on what kind of unit it is taken.")
        .fits(youngestAge, 10, "youngest_age")
        .fits(part, 60, "part")
        .orRefuse();
    this.name = name.strip();
    this.lowest = lowest;
    this.highest = highest;
    this.decimals = decimals;
    this.better = better;
    this.window = window;
    this.youngestAge = youngestAge;
    this.takenOn = String.join(" ", takenOn.stream().sorted().toList());
    this.part = part;
    this.described = described;
  }

  private static boolean isKept(@Nullable BigDecimal value) {
    return value == null || (value.scale() <= 4 && value.precision() - value.scale() <= 8);
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public UUID cropId() {
    return cropId;
  }

  public String code() {
    return code;
  }

  public String name() {
    return name;
  }

  public TraitKind kind() {
    return kind;
  }

  public @Nullable String unit() {
    return unit;
  }

  public @Nullable BigDecimal lowest() {
    return lowest;
  }

  public @Nullable BigDecimal highest() {
    return highest;
  }

  public int decimals() {
    return decimals;
  }

  public Better better() {
    return better;
  }

  public @Nullable Window window() {
    return window;
  }

  public @Nullable String youngestAge() {
    return youngestAge;
  }

  public Set<String> takenOn() {
    return Set.of(takenOn.split(" "));
  }

  public @Nullable String part() {
    return part;
  }

  public boolean isDescribed() {
    return described;
  }

  /** Whether a number is possible for this trait at all. */
  public boolean admits(BigDecimal value) {
    return (lowest == null || value.compareTo(lowest) >= 0)
        && (highest == null || value.compareTo(highest) <= 0);
  }
}
