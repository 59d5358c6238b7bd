package trialwood.dossier;

import jakarta.persistence.Embeddable;
import trialwood.record.Check;

/**
 * How many years after a first disclosure an authority still takes an application.
 *
 * @param homeYears where the disclosure was made in the authority's own territory
 * @param elsewhereYears where it was made anywhere else
 * @param elsewhereYearsTree the same for what the authority takes for a tree or a vine
 */
@Embeddable
public record Grace(int homeYears, int elsewhereYears, int elsewhereYearsTree) {

  /**
   * @throws trialwood.record.Refused when a period is below nothing or the trees' is the shorter
   */
  public Grace {
    Check.that()
        .holds(homeYears >= 0, "home_years", "A period has no fewer than 0 years.")
        .holds(elsewhereYears >= 0, "elsewhere_years", "A period has no fewer than 0 years.")
        .holds(
            elsewhereYearsTree >= elsewhereYears,
            "elsewhere_years_tree",
            "The period for trees is no shorter than the other.")
        .orRefuse();
  }
}
