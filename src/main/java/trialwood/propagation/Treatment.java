package trialwood.propagation;

import jakarta.persistence.Embeddable;
import org.jspecify.annotations.Nullable;
import trialwood.record.Check;

/**
 * How cuttings were treated. Typed once for a run and inherited by its batches; counts never are.
 *
 * @param ppm strength of the hormone as dipped, parts per million
 */
@Embeddable
public record Treatment(
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable Integer ppm) {

  /** Stronger solutions than this do not exist. */
  static final int STRONGEST_PPM = 30_000;

  public Treatment {
    Check.that()
        .holds(
            ppm == null || (ppm >= 0 && ppm <= STRONGEST_PPM),
            "ppm",
            "Hormone strength runs from 0 to 30,000 ppm; 0.3 % is 3,000 ppm.")
        .orRefuse();
  }
}
