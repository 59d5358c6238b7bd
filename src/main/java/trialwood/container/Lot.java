package trialwood.container;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.PostLoad;
import jakarta.persistence.PostPersist;
import jakarta.persistence.Transient;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Persistable;
import trialwood.crop.ContainerClass;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.Recorded;
import trialwood.web.Measures;

/** Plants potted together into one class of pots. Its label is its unit's. */
@Entity
public class Lot implements Persistable<UUID> {

  @Id private UUID unitId;
  private UUID containerClassId;
  private @Nullable BigDecimal litres;
  private LocalDate pottedOn;
  private int potted;
  private @Nullable String yard;
  private @Nullable String note;
  private @Nullable String medium;
  private @Nullable BigDecimal feedGrams;
  @Embedded private @Nullable Checked checked;
  @Embedded private Recorded recorded;
  @Transient private boolean stored;

  Lot(
      UUID unitId,
      ContainerClass containerClass,
      Pots pots,
      @Nullable Checked checked,
      Recorded recorded) {
    this.unitId = unitId;
    this.containerClassId = Objects.requireNonNull(containerClass.id());
    this.litres = pots.litres();
    this.pottedOn = pots.on();
    this.potted = pots.number();
    this.yard = pots.yard();
    this.note = pots.note();
    this.medium = pots.medium();
    this.feedGrams = pots.feedGrams();
    this.checked = checked;
    this.recorded = recorded;
    Check.that()
        .holds(
            potted > 0, "number", "At least one plant is potted; this says %d.".formatted(potted))
        .holds(
            litres == null || (litres.signum() > 0 && litres.compareTo(Pots.LARGEST) <= 0),
            "litres",
            "A pot holds more than 0 and at most %s litres.".formatted(Pots.LARGEST))
        .holds(yard == null || yard.length() <= 80, "yard", "Name the place in at most 80 letters.")
        .holds(note == null || note.length() <= 300, "note", "Keep the note under 300 letters.")
        .fits(medium, 80, "medium")
        .holds(
            feedGrams == null
                || (feedGrams.signum() >= 0 && feedGrams.compareTo(Pots.LARGEST) <= 0),
            "feedGrams",
            "A pot gets from 0 to %s g.".formatted(Pots.LARGEST))
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Lot() {}

  /** Refuses a day before the plants were potted. */
  Check since(LocalDate day) {
    return Check.that()
        .holds(
            !day.isBefore(pottedOn),
            "on",
            "The lot was potted later, on %s.".formatted(Measures.day(pottedOn)));
  }

  public UUID unitId() {
    return unitId;
  }

  public UUID containerClassId() {
    return containerClassId;
  }

  /** True volume of the pots, which may lie outside their class. */
  public @Nullable BigDecimal litres() {
    return litres;
  }

  public LocalDate pottedOn() {
    return pottedOn;
  }

  public int potted() {
    return potted;
  }

  public @Nullable String yard() {
    return yard;
  }

  public @Nullable String note() {
    return note;
  }

  /** What the pots were filled with. */
  public @Nullable String medium() {
    return medium;
  }

  /** Slow fertiliser mixed into one pot, g. */
  public @Nullable BigDecimal feedGrams() {
    return feedGrams;
  }

  /** What was unusual about the potting and asked about, with the answer. */
  public @Nullable Checked checked() {
    return checked;
  }

  public Recorded recorded() {
    return recorded;
  }

  @Override
  public UUID getId() {
    return unitId;
  }

  @Override
  public boolean isNew() {
    return !stored;
  }

  @PostLoad
  @PostPersist
  void markStored() {
    stored = true;
  }
}
