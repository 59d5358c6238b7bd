package trialwood.lineage;

/** How the seed came about. */
public enum Pollination {
  OPEN,
  CROSS,
  SELF,
  UNKNOWN
}
