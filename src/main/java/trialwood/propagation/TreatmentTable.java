package trialwood.propagation;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TreatmentLogit;
import trialwood.analysis.rate.TreatmentTrays;

/**
 * One accession that was stuck with several treatments in one run.
 *
 * @param treatments the run's own first
 * @param test whether all treatments are alike, and how much more than chance trays differ; or why
 *     that cannot be told
 */
public record TreatmentTable(String code, List<Row> treatments, Answer<Test> test) {

  private static final double LEVEL = 0.95;

  /**
   * A treatment over its trays.
   *
   * @param trays rooted ones of each tray, as people read them: 22 · 21 · 23
   * @param interval 95 % limits of the share by the spread of the trays; none without a test
   */
  public record Row(
      String treatment, String trays, long rooted, long stuck, @Nullable Interval interval) {

    /** Rooted ÷ stuck. */
    public double share() {
      return (double) rooted / stuck;
    }
  }

  /**
   * The quasi-binomial F test, its φ taken as no less than 1.
   *
   * @param phi as it came: variance of a tray's count ÷ that of independent cuttings
   */
  public record Test(double f, int numerator, int denominator, double p, double phi) {}

  static TreatmentTable of(String code, List<TreatmentTrays> treatments) {
    Answer<TreatmentLogit> fit = TreatmentLogit.of(treatments);
    @Nullable TreatmentLogit logit = fit.value().orElse(null);
    return new TreatmentTable(
        code,
        IntStream.range(0, treatments.size())
            .mapToObj(i -> row(treatments.get(i), logit == null ? null : limits(logit, i)))
            .toList(),
        logit == null ? Answer.lacking(fit.lack().orElseThrow()) : test(logit));
  }

  public @Nullable Test tested() {
    return test.value().orElse(null);
  }

  /** Why there is no test, where there is none. */
  public @Nullable String lacking() {
    return test.lack().orElse(null);
  }

  private static Row row(TreatmentTrays treatment, @Nullable Interval interval) {
    return new Row(
        treatment.treatment(),
        treatment.trays().stream()
            .map(TrayCount::rooted)
            .map(String::valueOf)
            .collect(Collectors.joining(" · ")),
        treatment.rooted(),
        treatment.stuck(),
        interval);
  }

  private static @Nullable Interval limits(TreatmentLogit logit, int treatment) {
    return logit.cautiousInterval(treatment, LEVEL).value().orElse(null);
  }

  private static Answer<Test> test(TreatmentLogit logit) {
    double phi = logit.model().phi().value().orElse(Double.NaN);
    return logit
        .cautiousTest()
        .map(f -> new Test(f.statistic(), f.numerator(), f.denominator(), f.pValue(), phi));
  }
}
