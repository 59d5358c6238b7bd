package trialwood.people;

/** What an account may do. */
public enum Role {
  /** Accounts, persons, ground data. */
  ADMINISTRATOR,
  /** Everything about plants, and the decisions. */
  BREEDER,
  /** Writes what is counted and measured. */
  BENCH,
  /** Prepares dossiers, keeps disclosures and filings. */
  DOSSIER,
  /** Sees and scores the plots of its own sites, nothing else. */
  COOPERATOR,
  /** Reads. */
  READER;

  /** As a word on a page. */
  public String word() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
