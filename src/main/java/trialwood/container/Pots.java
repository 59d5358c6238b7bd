package trialwood.container;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * The pots of a new lot.
 *
 * @param classId their container class
 * @param litres true volume of one pot
 * @param on the day they were filled
 * @param number of pots with a plant
 * @param yard where they stand
 * @param medium its name and lot
 * @param feedGrams slow fertiliser mixed into one pot, g
 */
public record Pots(
    UUID classId,
    @Nullable BigDecimal litres,
    LocalDate on,
    int number,
    @Nullable String yard,
    @Nullable String note,
    @Nullable String medium,
    @Nullable BigDecimal feedGrams) {

  /** With nothing said of the medium. */
  public Pots(
      UUID classId,
      @Nullable BigDecimal litres,
      LocalDate on,
      int number,
      @Nullable String yard,
      @Nullable String note) {
    this(classId, litres, on, number, yard, note, null, null);
  }

  /** Medium for all of them, litres; empty where nobody knows their true volume. */
  public Optional<BigDecimal> mediumLitres() {
    return Optional.ofNullable(litres).map(each -> each.multiply(BigDecimal.valueOf(number)));
  }

  static final BigDecimal LARGEST = new BigDecimal("1000");
}
