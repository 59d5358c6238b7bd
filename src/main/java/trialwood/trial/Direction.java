package trialwood.trial;

import java.util.Optional;
import trialwood.analysis.trial.Better;
import trialwood.crop.Trait;

/** Which way of a trait is better, as the arithmetic asks for it. */
public final class Direction {

  private Direction() {}

  /** Empty for a trait that has a target, or of which nothing is better. */
  public static Optional<Better> of(Trait trait) {
    return switch (trait.better()) {
      case HIGHER -> Optional.of(Better.HIGHER);
      case LOWER -> Optional.of(Better.LOWER);
      case TARGET, NEITHER -> Optional.empty();
    };
  }
}
