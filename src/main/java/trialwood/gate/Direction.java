package trialwood.gate;

import trialwood.analysis.Belief;

/** Which side of a line is the good one; the line itself belongs to it. */
public enum Direction {
  AT_LEAST("at least"),
  AT_MOST("at most");

  private final String word;

  Direction(String word) {
    this.word = word;
  }

  /** As words on a page. */
  public String word() {
    return word;
  }

  boolean reaches(double value, double line) {
    return this == AT_LEAST ? value >= line : value <= line;
  }

  /** The chance that the true value reaches the line. */
  double chance(Belief belief, double line) {
    double above = belief.chanceAtLeast(line);
    return this == AT_LEAST ? above : 1 - above;
  }
}
