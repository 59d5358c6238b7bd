package trialwood.crop;

import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import java.math.BigDecimal;
import java.util.UUID;
import org.hibernate.annotations.UuidGenerator;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/** A class of pots, such as #1; the true volume of a lot's pots is recorded beside it. */
@Entity
public class ContainerClass {

  @Id
  @UuidGenerator(style = UuidGenerator.Style.VERSION_7)
  private @Nullable UUID id;

  private String code;
  private @Nullable BigDecimal lowestLitres;
  private @Nullable BigDecimal highestLitres;
  private @Nullable String remark;

  public ContainerClass(
      String code,
      @Nullable BigDecimal lowestLitres,
      @Nullable BigDecimal highestLitres,
      @Nullable String remark) {
    this.code = code.strip();
    this.lowestLitres = lowestLitres;
    this.highestLitres = highestLitres;
    this.remark = remark;
    Check.that()
        .holds(!this.code.isEmpty(), "class", "Name the class, for example #1.")
        .holds(
            lowestLitres == null
                || highestLitres == null
                || lowestLitres.compareTo(highestLitres) <= 0,
            "lowest_litres",
            "The smallest volume is above the largest.")
        .orRefuse();
  }

  /** For Hibernate. */
  @SuppressWarnings("NullAway.Init")
  protected ContainerClass() {}

  public @Nullable UUID id() {
    return id;
  }

  public String code() {
    return code;
  }

  public @Nullable BigDecimal lowestLitres() {
    return lowestLitres;
  }

  public @Nullable BigDecimal highestLitres() {
    return highestLitres;
  }

  public @Nullable String remark() {
    return remark;
  }
}
