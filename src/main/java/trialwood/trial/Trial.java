package trialwood.trial;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.time.Instant;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Recorded;

/** Entries in blocks, planted to answer one question. */
@Entity
public class Trial {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private String code;
  private UUID cropId;
  private String name;
  private @Nullable String objective;
  private @Nullable Long seed;
  private int blocks;
  private int plantsPerPlot;
  private @Nullable Integer spacingMm;
  private String account;
  private Instant recordedAt;

  Trial(NewTrial trial, Recorded recorded) {
    this.code = trial.code().strip();
    this.cropId = trial.cropId();
    this.name = trial.name().strip();
    this.objective = trial.objective();
    this.seed = trial.seed();
    this.blocks = trial.blocks();
    this.plantsPerPlot = trial.plantsPerPlot();
    this.spacingMm = trial.spacingMm();
    this.account = recorded.account();
    this.recordedAt = recorded.recordedAt();
    Check.that()
        .holds(
            code.matches("[\\p{L}\\p{N}][\\p{L}\\p{N}._-]{0,19}"),
            "trial",
            "A trial's code has 1 to 20 letters, figures and dashes, for example T1.")
        .holds(
            !name.isEmpty() && name.length() <= 80,
            "name",
            "Give the trial a name of at most 80 letters.")
        .holds(
            objective == null || objective.length() <= 300,
            "objective",
            "Keep the question under 300 letters.")
        .holds(blocks >= 1 && blocks <= 50, "blocks", "A trial has 1 to 50 blocks at a site.")
        .holds(
            plantsPerPlot >= 1 && plantsPerPlot <= 200,
            "plants_per_plot",
            "A plot has 1 to 200 plants.")
        .holds(
            spacingMm == null || spacingMm > 0, "spacing_mm", "The spacing is a length above zero.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Trial() {}

  public @Nullable UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public UUID cropId() {
    return cropId;
  }

  public String name() {
    return name;
  }

  /** The question it was planted to answer. */
  public @Nullable String objective() {
    return objective;
  }

  /** What its layout was drawn from; none where it was laid out elsewhere. */
  public @Nullable Long seed() {
    return seed;
  }

  public int blocks() {
    return blocks;
  }

  public int plantsPerPlot() {
    return plantsPerPlot;
  }

  public @Nullable Integer spacingMm() {
    return spacingMm;
  }

  public String account() {
    return account;
  }

  public Instant recordedAt() {
    return recordedAt;
  }
}
