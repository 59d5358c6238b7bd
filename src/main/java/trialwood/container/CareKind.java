package trialwood.container;

import java.util.Locale;

/** What is done to a lot between potting and shift. */
public enum CareKind {
  PINCHED,
  PRUNED,
  COVERED,
  UNCOVERED;

  /** Whether shoots were cut; the others are of the winter. */
  public boolean isCut() {
    return this == PINCHED || this == PRUNED;
  }

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
