package trialwood.lineage;

/** What an accession is to the nursery. */
public enum AccessionKind {
  CANDIDATE,
  SEED_PARENT,
  CULTIVAR,
  WILD_PLANT,
  COMPARISON
}
