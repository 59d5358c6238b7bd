package trialwood.exchange;

/** The things that a cell can name by their code, and where their codes are found. */
public enum Known {
  CROP("crop", "select code, id from crop"),
  CONTAINER_CLASS("container class", "select code, id from container_class"),
  SITE("site", "select code, id from site"),
  PERSON("person", "select initials, id from person"),
  ACCESSION(
      "accession",
      "select code, id from accession union all select alias, accession_id from accession_alias"),
  CANDIDATE(
      "candidate",
      "select a.code, a.id from accession a join candidate c on c.accession_id = a.id"),
  POPULATION("population", "select code, id from population"),
  HOUSE("house", "select name, id from house"),
  RUN("sticking run", "select code, id from sticking_run"),
  BATCH("batch", "select code, id from batch"),
  BENCH("bench", "select code, id from bench"),
  TRAY("tray", "select label, id from unit where kind = 'TRAY'"),
  LOT("lot", "select label, id from unit where kind = 'LOT'"),
  PLANT("plant", "select label, id from unit where kind = 'PLANT'"),
  STOCK("stock plant", "select label, id from unit where kind = 'STOCK'"),
  PLOT("plot", "select label, id from unit where kind = 'PLOT'"),
  UNIT("label", "select label, id from unit"),
  TRIAL("trial", "select code, id from trial"),
  FILING_ROUTE("filing route", "select code, id from filing_route");

  private final String word;
  private final String query;

  Known(String word, String query) {
    this.word = word;
    this.query = query;
  }

  /** As a word in a sentence. */
  String word() {
    return word;
  }

  /** Gives each code with its id. */
  String query() {
    return query;
  }
}
