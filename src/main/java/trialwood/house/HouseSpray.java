package trialwood.house;

import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Checked;
import trialwood.record.CorrectableFact;
import trialwood.record.Problem;
import trialwood.record.Recorded;

/**
 * Something sprayed or otherwise applied in a house. It says from when one may go in again; it
 * never says that it is safe to.
 */
@Entity
public class HouseSpray extends CorrectableFact {

  /** Two weeks; longer than any label that keeps people out of a house. From memory. */
  private static final int LONGEST_HOURS = 336;

  private UUID houseId;
  private Instant endedAt;
  private int reEntryHours;
  private Instant reEntryAt;
  private String product;
  private @Nullable String rate;
  private String area;
  private @Nullable String reason;
  private @Nullable String licence;
  @Embedded private @Nullable Checked checked;

  HouseSpray(UUID houseId, NewSpray said, @Nullable Checked checked, Recorded recorded) {
    super(recorded);
    Check.that()
        .holds(
            !said.endedAt().isAfter(recorded.recordedAt()),
            "endedAt",
            "This is still to come. Write the spray down when it is done.")
        .holds(
            said.reEntryHours() >= 0 && said.reEntryHours() <= LONGEST_HOURS,
            "reEntryHours",
            "A re-entry interval runs from 0 to %d hours.".formatted(LONGEST_HOURS))
        .holds(!said.product().isBlank(), "product", "Write the product as on its label.")
        .holds(!said.area().isBlank(), "area", "Write what was treated: the whole house, bench 2.")
        .fits(said.product(), 120, "product")
        .fits(said.rate(), 80, "rate")
        .fits(said.area(), 120, "area")
        .fits(said.reason(), 120, "reason")
        .fits(said.licence(), 60, "licence")
        .orRefuse();
    this.houseId = houseId;
    this.endedAt = said.endedAt();
    this.reEntryHours = said.reEntryHours();
    this.reEntryAt = endedAt.plus(Duration.ofHours(reEntryHours));
    this.product = said.product();
    this.rate = said.rate();
    this.area = said.area();
    this.reason = said.reason();
    this.licence = said.licence();
    this.checked = checked;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected HouseSpray() {}

  /** What is unusual about it. */
  public static List<Problem> questions(NewSpray said) {
    return said.reEntryHours() == 0
        ? List.of(
            new Problem(
                "reEntryHours", "No waiting time at all: does the label say so in as many words?"))
        : List.of();
  }

  HouseSpray insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  public UUID houseId() {
    return houseId;
  }

  public Instant endedAt() {
    return endedAt;
  }

  public int reEntryHours() {
    return reEntryHours;
  }

  /** Before this moment nobody goes in. */
  public Instant reEntryAt() {
    return reEntryAt;
  }

  public String product() {
    return product;
  }

  public @Nullable String rate() {
    return rate;
  }

  public String area() {
    return area;
  }

  public @Nullable String reason() {
    return reason;
  }

  public @Nullable String licence() {
    return licence;
  }

  public @Nullable Checked checked() {
    return checked;
  }
}
