package trialwood.container;

import jakarta.persistence.Column;
import jakarta.persistence.Embedded;
import jakarta.persistence.Entity;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.record.Checked;
import trialwood.record.CorrectableFact;
import trialwood.record.Recorded;

/** How good the plants and the root balls of a lot were on a day. */
@Entity
public class LotGrade extends CorrectableFact {

  private UUID lotId;
  private LocalDate onDate;

  @Column(name = "grade_a")
  private @Nullable Integer a;

  @Column(name = "grade_b")
  private @Nullable Integer b;

  @Column(name = "grade_c")
  private @Nullable Integer c;

  private @Nullable Integer rootBall;
  @Embedded private @Nullable Checked checked;

  /**
   * @param alive plants in the lot on that day, by its records
   */
  LotGrade(Lot lot, NewGrade grade, long alive, @Nullable Checked checked, Recorded recorded) {
    super(recorded);
    this.lotId = lot.unitId();
    this.onDate = grade.on();
    this.a = grade.a();
    this.b = grade.b();
    this.c = grade.c();
    this.rootBall = grade.rootBall();
    this.checked = checked;
    long given = Stream.of(a, b, c).filter(Objects::nonNull).count();
    lot.since(onDate)
        .holds(given == 0 || given == 3, "a", "Fill A, B and C; 0 where there are none.")
        .holds(
            Stream.of(a, b, c).filter(Objects::nonNull).allMatch(number -> number >= 0),
            "a",
            "Nothing below zero can be graded.")
        .holds(
            given > 0 || rootBall != null,
            "a",
            "Grade the plants, or give a score of the root ball.")
        .holds(given < 3 || grade.graded() > 0, "a", "At least one plant is graded.")
        .holds(
            grade.graded() <= alive, "a", "%d graded, %d alive.".formatted(grade.graded(), alive))
        .holds(
            rootBall == null || RootBall.isScore(rootBall),
            "rootBall",
            "A root ball scores 0 to 5.")
        .orRefuse();
  }

  LotGrade insteadOf(UUID earlier, String reason) {
    supersede(earlier, reason);
    return this;
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected LotGrade() {}

  public UUID lotId() {
    return lotId;
  }

  public LocalDate onDate() {
    return onDate;
  }

  public @Nullable Integer a() {
    return a;
  }

  public @Nullable Integer b() {
    return b;
  }

  public @Nullable Integer c() {
    return c;
  }

  public @Nullable Integer rootBall() {
    return rootBall;
  }

  /** What was unusual and asked about, with the answer. */
  public @Nullable Checked checked() {
    return checked;
  }
}
