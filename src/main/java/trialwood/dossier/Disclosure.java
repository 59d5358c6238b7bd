package trialwood.dossier;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** One occasion on which a candidate left the nursery's own hands or was shown to others. */
@Entity
public class Disclosure extends CorrectableFact {

  /** What was done. */
  public enum Kind {
    SALE,
    OFFER,
    GIFT,
    TRIAL_SHIPMENT,
    EXHIBIT,
    PUBLICATION;

    /** As words on a page. */
    public String word() {
      return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
  }

  private UUID accessionId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  private String territory;
  private @Nullable Integer number;
  private @Nullable String agreement;
  private @Nullable String toWhom;
  private @Nullable LocalDate learnedOn;
  private @Nullable String note;
  private boolean struckOut;

  /**
   * @param number plants or pieces, where it can be counted
   * @param agreement number or name of the paper; none where there was no agreement
   * @param learnedOn the day it became known at the desk, where that was later
   * @throws trialwood.record.Refused when it was known before it happened, or nothing was handed
   *     over
   */
  public Disclosure(
      UUID accessionId,
      LocalDate onDate,
      Kind kind,
      String territory,
      @Nullable Integer number,
      @Nullable String agreement,
      @Nullable String toWhom,
      @Nullable LocalDate learnedOn,
      @Nullable String note,
      Recorded recorded) {
    super(recorded);
    this.accessionId = accessionId;
    this.onDate = onDate;
    this.kind = kind;
    this.territory = territory.strip();
    this.number = number;
    this.agreement = agreement;
    this.toWhom = toWhom;
    this.learnedOn = learnedOn;
    this.note = note;
    Check.that()
        .holds(!this.territory.isEmpty(), "territory", "Say where it happened.")
        .holds(number == null || number > 0, "number", "Leave it empty where nothing was counted.")
        .holds(
            learnedOn == null || !learnedOn.isBefore(onDate),
            "learned_on",
            "It became known before it happened.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Disclosure() {}

  public UUID accessionId() {
    return accessionId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Kind kind() {
    return kind;
  }

  public String territory() {
    return territory;
  }

  public @Nullable Integer number() {
    return number;
  }

  public @Nullable String agreement() {
    return agreement;
  }

  public @Nullable String toWhom() {
    return toWhom;
  }

  public @Nullable LocalDate learnedOn() {
    return learnedOn;
  }

  public @Nullable String note() {
    return note;
  }

  /** Whether it never was and only stands here to say so. */
  public boolean isStruckOut() {
    return struckOut;
  }

  /**
   * Takes the place of an earlier record.
   *
   * @throws trialwood.record.Refused without a reason
   */
  public Disclosure insteadOf(Disclosure earlier, String reason) {
    supersede(Objects.requireNonNull(earlier.id()), reason);
    return this;
  }

  /**
   * The record that says that this one never was.
   *
   * @throws trialwood.record.Refused without a reason
   */
  public Disclosure struckOut(String reason, Recorded recorded) {
    Disclosure struck =
        new Disclosure(
            accessionId,
            onDate,
            kind,
            territory,
            number,
            agreement,
            toWhom,
            learnedOn,
            note,
            recorded);
    struck.struckOut = true;
    return struck.insteadOf(this, reason);
  }
}
