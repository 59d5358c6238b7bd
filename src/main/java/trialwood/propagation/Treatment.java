package trialwood.propagation;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;
import trialwood.record.Problem;

/**
 * How cuttings were treated. Typed once for a run and inherited by its batches; counts never are.
 *
 * @param ppm strength of the hormone as dipped, parts per million
 * @param solutionMadeOn the day the solution was mixed; it loses strength
 */
@Embeddable
public record Treatment(
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable Integer ppm,
    @Nullable LocalDate solutionMadeOn) {

  public static final Treatment NONE = new Treatment(null, null, null, null);

  /** Stronger solutions than this do not exist. */
  public static final int STRONGEST_PPM = 30_000;

  private static final int STRONG_ON_SOFTWOOD_PPM = 10_000;
  private static final int PERHAPS_PERCENT = 10;
  private static final int FRESH_DAYS = 30;
  private static final int QUICK_DIP_S = 10;
  private static final int QUICK_DIP_PPM = 1_000;

  public Treatment {
    Check.that()
        .fits(wounding, 40, "wounding")
        .fits(hormone, 40, "hormone")
        .fits(form, 40, "form")
        .holds(
            ppm == null || (ppm >= 0 && ppm <= STRONGEST_PPM),
            "ppm",
            "Hormone strength runs from 0 to 30,000 ppm; 0.3 % is 3,000 ppm.")
        .orRefuse();
  }

  public Treatment(
      @Nullable String wounding,
      @Nullable String hormone,
      @Nullable String form,
      @Nullable Integer ppm) {
    this(wounding, hormone, form, ppm, null);
  }

  /**
   * What is possible but unusual (common practice, no source).
   *
   * @param cutting the kind of cutting in words; softwood unless they say hardwood or semi-hard
   * @param dipS time in the dip, seconds
   */
  List<Problem> unusual(@Nullable String cutting, @Nullable Integer dipS, LocalDate stuckOn) {
    boolean soft = cutting == null || !cutting.toLowerCase(Locale.ROOT).contains("hard");
    int strength = ppm == null ? 0 : ppm;
    long age = solutionMadeOn == null ? 0 : ChronoUnit.DAYS.between(solutionMadeOn, stuckOn);
    return new Unusual()
        .ask(
            soft && strength > STRONG_ON_SOFTWOOD_PPM,
            "ppm",
            "%,d ppm is %s %%, above the usual 10,000 ppm for softwood."
                .formatted(strength, percent(strength)))
        .ask(
            strength > 0 && strength < PERHAPS_PERCENT,
            "ppm",
            "%d ppm is next to nothing. Did you mean %d %%, which is %,d ppm?"
                .formatted(strength, strength, strength * 10_000))
        .ask(
            dipS != null && dipS > QUICK_DIP_S && strength > QUICK_DIP_PPM,
            "dip_s",
            "A dip of %,d s in %,d ppm: a quick dip takes 1 to 5 s.".formatted(dipS, strength))
        .ask(
            age > FRESH_DAYS,
            "solution_made_on",
            "The solution is %d days old; after 30 it has lost strength.".formatted(age))
        .list();
  }

  private static String percent(int ppm) {
    return BigDecimal.valueOf(ppm, 4).stripTrailingZeros().toPlainString();
  }
}
