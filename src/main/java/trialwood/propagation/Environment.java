package trialwood.propagation;

import jakarta.persistence.Column;
import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Problem;

/**
 * The house around a run. Mist is kept as numbers beside the words of the run, so that runs can be
 * compared.
 *
 * @param mistOnS length of a burst by day, seconds
 * @param mistEveryMin from one burst to the next, minutes
 * @param airC air by day, °C
 */
@Embeddable
public record Environment(
    @Column(name = "mist_on_s") @Nullable Integer mistOnS,
    @Nullable BigDecimal mistEveryMin,
    @Column(name = "air_c") @Nullable BigDecimal airC,
    @Nullable Integer shadePercent,
    @Nullable Integer humidityPercent) {

  public static final Environment UNKNOWN = new Environment(null, null, null, null, null);

  private static final BigDecimal HOTTEST_USUAL_AIR = BigDecimal.valueOf(38);
  private static final BigDecimal TWO_HOURS = BigDecimal.valueOf(120);
  private static final BigDecimal SIXTY = BigDecimal.valueOf(60);

  public Environment {
    Check.that()
        .holds(
            mistEveryMin == null || mistEveryMin.signum() > 0,
            "mist_every_min",
            "Type the minutes from one burst of mist to the next.")
        .holds(
            mistOnS == null
                || mistEveryMin == null
                || BigDecimal.valueOf(mistOnS).compareTo(mistEveryMin.multiply(SIXTY)) < 0,
            "mist_on_s",
            "The mist is on as long as from one burst to the next, or longer.")
        .holds(isWithin(airC, 50), "air_c", "Air runs from 0 to 50 °C.")
        .holds(isShare(shadePercent), "shade_percent", "Shade runs from 0 to 100 %.")
        .holds(isShare(humidityPercent), "humidity_percent", "Humidity runs from 0 to 100 %.")
        .orRefuse();
  }

  /** What is possible but unusual (common practice, no source). */
  List<Problem> unusual() {
    return new Unusual()
        .ask(
            airC != null && airC.compareTo(HOTTEST_USUAL_AIR) > 0,
            "air_c",
            "%s °C in the air: cuttings scorch above 38.".formatted(airC))
        .ask(
            mistEveryMin != null && mistEveryMin.compareTo(TWO_HOURS) >= 0,
            "mist_every_min",
            "%s minutes from one burst to the next: two hours without mist wilt softwood."
                .formatted(mistEveryMin))
        .list();
  }

  static boolean isWithin(@Nullable BigDecimal degrees, int highest) {
    return degrees == null
        || (degrees.signum() >= 0 && degrees.compareTo(BigDecimal.valueOf(highest)) <= 0);
  }

  private static boolean isShare(@Nullable Integer percent) {
    return percent == null || (percent >= 0 && percent <= 100);
  }
}
