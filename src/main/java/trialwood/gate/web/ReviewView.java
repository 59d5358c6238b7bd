package trialwood.gate.web;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import trialwood.gate.Choice;
import trialwood.gate.Finding;
import trialwood.gate.Outlook;
import trialwood.gate.Review;
import trialwood.gate.Verdict;
import trialwood.web.IntervalPicture;

/**
 * A review as the decision page shows it, musts before preferences.
 *
 * @param openToTrays whether something is open that further trays may settle
 */
record ReviewView(Choice line, String because, int policy, List<Row> rows, boolean openToTrays) {

  /**
   * One criterion.
   *
   * @param records from the address of a record to what it is
   */
  record Row(
      String code,
      String label,
      String need,
      String why,
      boolean attested,
      Verdict verdict,
      String found,
      String asked,
      String because,
      @Nullable String comparison,
      String method,
      Map<String, String> records,
      @Nullable IntervalPicture picture) {}

  static ReviewView of(Review review) {
    List<Row> rows =
        review.findings().stream()
            .sorted((a, b) -> a.criterion().need().compareTo(b.criterion().need()))
            .map(ReviewView::row)
            .toList();
    return new ReviewView(
        review.line(),
        review.because(),
        review.policy().number(),
        rows,
        review.findings().stream().anyMatch(Outlook::isOpen));
  }

  private static Row row(Finding finding) {
    IntervalPicture.Scale scale = Pictures.scale(List.of(finding));
    return new Row(
        finding.criterion().code(),
        finding.criterion().label(),
        finding.criterion().need().word(),
        finding.criterion().why(),
        finding.criterion().ask() == null,
        finding.verdict(),
        finding.found(),
        finding.asked(),
        finding.because(),
        finding.evidence().comparison(),
        finding.evidence().method(),
        finding.records(),
        scale == null ? null : Pictures.of(finding, finding.criterion(), scale));
  }
}
