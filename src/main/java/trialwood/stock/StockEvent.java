package trialwood.stock;

import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import java.time.LocalDate;
import java.util.Locale;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** A stock plant was moved, tested for a virus, or is dead. */
@Entity
public class StockEvent extends CorrectableFact {

  /** What happened. */
  public enum Kind {
    MOVED,
    TESTED,
    DIED;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** What a test found. */
  public enum Result {
    NEGATIVE,
    POSITIVE
  }

  private UUID stockId;
  private LocalDate onDate;

  @Enumerated(EnumType.STRING)
  private Kind kind;

  private @Nullable String place;
  private @Nullable String agent;

  @Enumerated(EnumType.STRING)
  private @Nullable Result result;

  private @Nullable String note;

  StockEvent(StockPlant plant, NewStockEvent said, Recorded recorded) {
    super(recorded);
    this.stockId = plant.unitId();
    this.onDate = said.on();
    this.kind = said.kind();
    this.place = said.place();
    this.agent = said.agent();
    this.result = said.result();
    this.note = said.note();
    Check.that()
        .holds(
            !onDate.isBefore(plant.sinceDate()),
            "on",
            "The plant is kept for cuttings from a later day.")
        .holds((kind == Kind.MOVED) == (place != null), "place", "Say where it stands now.")
        .fits(place, 80, "place")
        .holds(
            (kind == Kind.TESTED) == (agent != null),
            "agent",
            "Say what it was tested for, as the laboratory calls it.")
        .fits(agent, 80, "agent")
        .holds((kind == Kind.TESTED) == (result != null), "result", "Say what the test found.")
        .holds(kind != Kind.DIED || note != null, "note", "Say what it died of.")
        .fits(note, 300, "note")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected StockEvent() {}

  StockEvent insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID stockId() {
    return stockId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public Kind kind() {
    return kind;
  }

  public @Nullable String place() {
    return place;
  }

  /** What the test was for. */
  public @Nullable String agent() {
    return agent;
  }

  public @Nullable Result result() {
    return result;
  }

  public @Nullable String note() {
    return note;
  }
}
