package trialwood.gate;

import jakarta.persistence.Embeddable;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/**
 * Where a rule draws its line.
 *
 * @param line in the unit of the metric
 * @param chance of reaching the line that the rule asks for, 0 to 1; only for chances
 */
@Embeddable
public record Threshold(@Nullable BigDecimal line, @Nullable BigDecimal chance) {

  public static final Threshold NONE = new Threshold(null, null);

  public static Threshold at(String line) {
    return new Threshold(new BigDecimal(line), null);
  }

  public static Threshold at(String line, String chance) {
    return new Threshold(new BigDecimal(line), new BigDecimal(chance));
  }
}
