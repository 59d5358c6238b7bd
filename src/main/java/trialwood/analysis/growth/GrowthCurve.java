package trialwood.analysis.growth;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StraightLine;

/**
 * The readings of one plant in the order of time, and its growth: absolute (size gained per unit of
 * time), relative (gained per unit of size and time, d ln(size)/dt) and the area under the curve by
 * the trapezoid rule.
 *
 * <p>Source: Hunt, R. (1982) Plant Growth Curves: the Functional Approach to Plant Growth Analysis,
 * Edward Arnold; the relative rate: Fisher, R. A. (1921) Some remarks on the methods formulated in
 * a recent article on the quantitative analysis of plant growth. Annals of Applied Biology 7,
 * 367–372
 *
 * @param readings at least one, no two at the same time
 */
public record GrowthCurve(List<Reading> readings) {

  private static final String ONE = "A rate needs readings at two times.";
  private static final String NOT_ABOVE_NOTHING =
      "Relative growth is of a size above 0, and one reading is not.";

  /**
   * The relative rate between two readings that follow each other.
   *
   * @param from time of the first
   * @param to time of the second
   * @param rate ln(second ÷ first)/(to − from), per unit of time
   */
  public record Between(double from, double to, double rate) {}

  /**
   * @throws IllegalArgumentException if there is no reading, or two at one time
   */
  public GrowthCurve {
    Refuse.unless(!readings.isEmpty(), "There is no reading.");
    readings = readings.stream().sorted(Comparator.comparingDouble(Reading::time)).toList();
    for (int i = 1; i < readings.size(); i++) {
      double time = readings.get(i).time();
      Refuse.unless(time > readings.get(i - 1).time(), "Two readings at time %s.", time);
    }
  }

  /** The curve of readings in any order. */
  public static GrowthCurve of(Collection<Reading> readings) {
    return new GrowthCurve(List.copyOf(readings));
  }

  /** From the first reading to the last, in the unit of time. */
  public double duration() {
    return last().time() - first().time();
  }

  /** The straight line through the readings; lacking with a single one. */
  public Answer<StraightLine> line() {
    return fitted(Reading::value);
  }

  /** (last − first)/duration; lacking with a single reading. */
  public Answer<Double> absoluteRate() {
    return readings.size() < 2
        ? Answer.lacking(ONE)
        : Answer.known((last().value() - first().value()) / duration());
  }

  /** ln(last ÷ first)/duration; lacking with a single reading, or one of the two not above 0. */
  public Answer<Double> relativeRate() {
    if (readings.size() < 2) {
      return Answer.lacking(ONE);
    }
    return first().value() > 0 && last().value() > 0
        ? Answer.known(Math.log(last().value() / first().value()) / duration())
        : Answer.lacking(NOT_ABOVE_NOTHING);
  }

  /** The line through ln(size), whose slope is the relative rate over all readings. */
  public Answer<StraightLine> relativeLine() {
    return allAboveNothing()
        ? fitted(reading -> Math.log(reading.value()))
        : Answer.lacking(NOT_ABOVE_NOTHING);
  }

  /** The relative rate of every interval; lacking with a single reading, or one not above 0. */
  public Answer<List<Between>> relativeRates() {
    if (readings.size() < 2) {
      return Answer.lacking(ONE);
    }
    if (!allAboveNothing()) {
      return Answer.lacking(NOT_ABOVE_NOTHING);
    }
    var rates = new ArrayList<Between>();
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      double rate = Math.log(to.value() / from.value()) / (to.time() - from.time());
      rates.add(new Between(from.time(), to.time(), rate));
    }
    return Answer.known(List.copyOf(rates));
  }

  /** Area under straight lines from reading to reading; 0 for a single one. */
  public double area() {
    double area = 0;
    for (int i = 1; i < readings.size(); i++) {
      Reading from = readings.get(i - 1);
      Reading to = readings.get(i);
      area += (from.value() + to.value()) / 2 * (to.time() - from.time());
    }
    return area;
  }

  public Reading first() {
    return readings.get(0);
  }

  public Reading last() {
    return readings.get(readings.size() - 1);
  }

  private boolean allAboveNothing() {
    return readings.stream().allMatch(reading -> reading.value() > 0);
  }

  private Answer<StraightLine> fitted(ToDoubleFunction<Reading> value) {
    return StraightLine.through(
        readings.stream().mapToDouble(Reading::time).toArray(),
        readings.stream().mapToDouble(value).toArray());
  }
}
