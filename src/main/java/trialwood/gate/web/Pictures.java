package trialwood.gate.web;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Interval;
import trialwood.evidence.Evidence;
import trialwood.gate.Criterion;
import trialwood.gate.Direction;
import trialwood.gate.Finding;
import trialwood.web.IntervalPicture;
import trialwood.web.IntervalPicture.Scale;

/** Draws findings that say how sure they are. */
final class Pictures {

  private Pictures() {}

  /** One scale for findings of one kind; none where none of them has an interval. */
  static @Nullable Scale scale(List<Finding> findings) {
    List<Evidence> sure =
        findings.stream().map(Finding::evidence).filter(e -> e.interval() != null).toList();
    if (sure.isEmpty()) {
      return null;
    }
    String unit = sure.get(0).unit();
    double[] ends =
        findings.stream().flatMapToDouble(Pictures::ends).filter(Double::isFinite).toArray();
    double low = DoubleStream.of(ends).min().orElse(0);
    double high = DoubleStream.of(ends).max().orElse(1);
    if (unit.equals("%") && low >= 0 && high <= 100) {
      return Scale.percent();
    }
    double margin = high > low ? (high - low) / 20 : 1;
    return new Scale(low - margin, high + margin, 1, unit);
  }

  /**
   * @param withHope the criterion whose discard line is drawn as the end of hope
   */
  static IntervalPicture of(Finding finding, Criterion withHope, Scale scale) {
    IntervalPicture picture = IntervalPicture.on(scale);
    Evidence evidence = finding.evidence();
    BigDecimal line = finding.criterion().advance().line();
    if (line != null) {
      picture =
          finding.criterion().direction() == Direction.AT_LEAST
              ? picture.reaching(line.doubleValue())
              : picture.stayingUnder(line.doubleValue());
    }
    BigDecimal hope = withHope.discard().line();
    if (hope != null) {
      picture = picture.hopeEndingAt(hope.doubleValue());
    }
    Interval interval = evidence.interval();
    if (interval != null) {
      picture = picture.between(interval.low(), interval.high());
    }
    return evidence.value() == null ? picture : picture.showing(evidence.value());
  }

  private static DoubleStream ends(Finding finding) {
    Interval interval = finding.evidence().interval();
    Stream<@Nullable Number> numbers =
        Stream.of(
            finding.evidence().value(),
            interval == null ? null : interval.low(),
            interval == null ? null : interval.high(),
            finding.criterion().advance().line(),
            finding.criterion().discard().line());
    return numbers.flatMapToDouble(
        number -> number == null ? DoubleStream.empty() : DoubleStream.of(number.doubleValue()));
  }
}
