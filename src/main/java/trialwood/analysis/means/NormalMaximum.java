package trialwood.analysis.means;

/** The greatest of k correlated standard normal variables. */
sealed interface NormalMaximum permits ProductCorrelation, GeneralCorrelation {

  /** Chance that at least one of them exceeds d. */
  double beyond(double d);

  /** Chance that at least one of them exceeds d or falls below −d; d is not negative. */
  double beyondOnEitherSide(double d);
}
