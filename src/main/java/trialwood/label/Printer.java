package trialwood.label;

import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.math.BigDecimal;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.hibernate.envers.Audited;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.CodeKey;

/** A printer, and what is done to a page so that it comes out of it in the right place and size. */
@Entity
@Audited
public class Printer {

  private static final BigDecimal FARTHEST = BigDecimal.valueOf(20);

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  @Version private int version;
  private String name;

  @Column(name = "right_mm")
  private BigDecimal moveRight;

  @Column(name = "down_mm")
  private BigDecimal moveDown;

  private BigDecimal scalePercent;

  /**
   * @param name as people call it; it stands in addresses and stays
   */
  public Printer(String name, BigDecimal moveRight, BigDecimal moveDown, BigDecimal scalePercent) {
    this.name = name.strip();
    Check.that()
        .holds(!this.name.isEmpty(), "name", "Give the printer a name.")
        .fits(this.name, 40, "name")
        .holds(this.name.isEmpty() || CodeKey.isPlain(this.name), "name", CodeKey.PLAIN_RULE)
        .orRefuse();
    set(moveRight, moveDown, scalePercent);
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected Printer() {}

  /**
   * Sets what is done to each page.
   *
   * @param moveRight millimetres to the right; less than zero is to the left
   * @param moveDown millimetres down; less than zero is up
   * @param scalePercent of the true size, from the upper left corner of the paper
   */
  public void set(BigDecimal moveRight, BigDecimal moveDown, BigDecimal scalePercent) {
    Check.that()
        .holds(
            moveRight.abs().compareTo(FARTHEST) <= 0,
            "moveRight",
            "A page is moved by 20 mm at most.")
        .holds(
            moveDown.abs().compareTo(FARTHEST) <= 0,
            "moveDown",
            "A page is moved by 20 mm at most.")
        .holds(
            scalePercent.compareTo(BigDecimal.valueOf(90)) >= 0
                && scalePercent.compareTo(BigDecimal.valueOf(110)) <= 0,
            "scalePercent",
            "The scale lies between 90 and 110 %.")
        .orRefuse();
    this.moveRight = moveRight;
    this.moveDown = moveDown;
    this.scalePercent = scalePercent;
  }

  public @Nullable UUID id() {
    return id;
  }

  public int version() {
    return version;
  }

  public String name() {
    return name;
  }

  public BigDecimal moveRight() {
    return moveRight;
  }

  public BigDecimal moveDown() {
    return moveDown;
  }

  public BigDecimal scalePercent() {
    return scalePercent;
  }
}
