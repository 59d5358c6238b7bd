package trialwood.gate;

import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Interval;
import trialwood.evidence.Evidence;
import trialwood.evidence.RecordLink;

/**
 * The evidence of a decision as it is kept, for whoever wants to compute with it later. Dates are
 * ISO text. A change of this form is a new schema number; what was stored stays as it was.
 *
 * @param policy number of the policy's version
 */
public record StoredEvidence(int policy, String asOf, boolean provisional, List<Item> criteria) {

  /** The schema number of this form. */
  static final int SCHEMA = 1;

  /** One criterion with all that was known. */
  public record Item(
      String criterion,
      String kind,
      String verdict,
      @Nullable String metric,
      @Nullable Double value,
      String unit,
      @Nullable String counted,
      @Nullable Interval interval,
      int units,
      int replicates,
      int sites,
      int seasons,
      @Nullable String asOf,
      String method,
      @Nullable String comparison,
      List<String> remarks,
      boolean discardBarred,
      List<RecordLink> records) {}

  static StoredEvidence of(Review review) {
    return new StoredEvidence(
        review.policy().number(),
        review.asOf().toString(),
        review.provisional(),
        review.findings().stream().map(StoredEvidence::item).toList());
  }

  private static Item item(Finding finding) {
    Criterion criterion = finding.criterion();
    Evidence evidence = finding.evidence();
    return new Item(
        criterion.code(),
        criterion.kind().name(),
        finding.verdict().name(),
        criterion.ask() == null ? null : criterion.ask().metricKey(),
        evidence.value(),
        evidence.unit(),
        evidence.counted(),
        evidence.interval(),
        evidence.n(),
        evidence.replicates(),
        evidence.sites(),
        evidence.seasons(),
        evidence.asOf() == null ? null : evidence.asOf().toString(),
        evidence.method(),
        evidence.comparison(),
        evidence.remarks(),
        evidence.discardBarred(),
        evidence.records());
  }
}
