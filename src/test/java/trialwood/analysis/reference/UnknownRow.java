package trialwood.analysis.reference;

/** A row asks for something that nobody here knows how to compute. */
final class UnknownRow extends RuntimeException {

  private static final long serialVersionUID = 1L;

  UnknownRow(Row row) {
    super("nobody computes " + row);
  }
}
