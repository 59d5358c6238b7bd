package trialwood.web;

import java.math.BigDecimal;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One question as a picture: is it beyond the line, and how sure? Holds the values and answers with
 * coordinates in pixels, labels and the sentence that says the same to those who cannot see it, so
 * that the template does no arithmetic. Values outside the scale are drawn at its edge, an estimate
 * there as an arrow that points on.
 *
 * @param scale what the axis runs over; the same down a column
 * @param line the line to reach
 * @param least whether the line is a least ("at least 80") or a most ("at most 18")
 * @param hopeEnds the lower line at which a discard is spoken for
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param estimate the value in the records
 */
public record IntervalPicture(
    Scale scale,
    @Nullable Double line,
    boolean least,
    @Nullable Double hopeEnds,
    @Nullable Double low,
    @Nullable Double high,
    @Nullable Double estimate) {

  private static final int WIDTH = 180;
  private static final int HEIGHT = 40;
  private static final int EDGE = 7;
  private static final int AXIS = 29;
  private static final int LABEL_HALF = 26;
  private static final Measures MEASURES = new Measures(ZoneOffset.UTC);

  /**
   * What an axis runs over.
   *
   * @param decimals how many are shown
   * @param unit behind a number, may be empty
   */
  public record Scale(double low, double high, int decimals, String unit) {
    public Scale {
      if (!(low < high)) {
        throw new IllegalArgumentException("a scale runs upwards, not from " + low + " to " + high);
      }
    }

    /** From 0 to 100 %, for values given in percent. */
    public static Scale percent() {
      return new Scale(0, 100, 1, "%");
    }
  }

  /** A place on the axis; the anchor is SVG's {@code text-anchor}. */
  public record Tick(String x, String label, String anchor) {}

  public static IntervalPicture on(Scale scale) {
    return new IntervalPicture(scale, null, true, null, null, null, null);
  }

  /** The line is reached from below: at least so much. */
  public IntervalPicture reaching(double line) {
    return new IntervalPicture(scale, line, true, hopeEnds, low, high, estimate);
  }

  /** The line is not to be passed: at most so much. */
  public IntervalPicture stayingUnder(double line) {
    return new IntervalPicture(scale, line, false, hopeEnds, low, high, estimate);
  }

  public IntervalPicture hopeEndingAt(double line) {
    return new IntervalPicture(scale, this.line, least, line, low, high, estimate);
  }

  public IntervalPicture between(double low, double high) {
    return new IntervalPicture(scale, line, least, hopeEnds, low, high, estimate);
  }

  public IntervalPicture showing(double estimate) {
    return new IntervalPicture(scale, line, least, hopeEnds, low, high, estimate);
  }

  public int width() {
    return WIDTH;
  }

  public int height() {
    return HEIGHT;
  }

  /** The axis with its ticks, as path data. */
  public String axis() {
    StringBuilder path = new StringBuilder("M%d %dH%d".formatted(EDGE, AXIS, WIDTH - EDGE));
    for (double tick : ticks()) {
      path.append("M%s %dv6".formatted(x(tick), AXIS - 3));
    }
    return path.toString();
  }

  /** The ends of the axis with their numbers, for the head of a column. */
  public List<Tick> endTicks() {
    List<Double> ticks = ticks();
    double first = ticks.get(0);
    double last = ticks.get(ticks.size() - 1);
    int decimals = decimalsOf(last - first);
    return List.of(
        new Tick(x(first), MEASURES.number(first, decimals), "start"),
        new Tick(x(last), MEASURES.quantity(last, decimals, scale.unit), "end"));
  }

  public boolean hasInterval() {
    return low != null && high != null;
  }

  public String barX() {
    return low == null ? "" : x(low);
  }

  public int barY() {
    return AXIS - 3;
  }

  /** At least as wide as it is high, so that a sure answer can still be seen. */
  public String barWidth() {
    return low == null || high == null ? "" : pixels(Math.max(6, at(high) - at(low)));
  }

  public String lineMark() {
    return line == null ? "" : upright(line);
  }

  public String hopeMark() {
    return hopeEnds == null ? "" : upright(hopeEnds);
  }

  /** ≥ 80 or ≤ 18: the sign keeps the direction without colour. */
  public String label() {
    return line == null ? "" : (least ? "≥\u00a0" : "≤\u00a0") + bare(line);
  }

  public String labelX() {
    if (line == null) {
      return "";
    }
    return pixels(
        switch (labelAnchor()) {
          case "start" -> 0;
          case "end" -> WIDTH;
          default -> at(line);
        });
  }

  public String labelAnchor() {
    if (line == null || at(line) < LABEL_HALF) {
      return "start";
    }
    return at(line) > WIDTH - LABEL_HALF ? "end" : "middle";
  }

  /** A round dot, or an arrow at the edge when the value lies beyond the scale. */
  public String dot() {
    if (estimate == null) {
      return "";
    }
    if (estimate < scale.low) {
      return "M0 %dl9 -5.5v11z".formatted(AXIS);
    }
    if (estimate > scale.high) {
      return "M%d %dl-9 -5.5v11z".formatted(WIDTH, AXIS);
    }
    return "M%s %da5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0 -11 0z"
        .formatted(pixels(at(estimate) - 5.5), AXIS);
  }

  /** What the picture says, in words. */
  public String sentence() {
    StringBuilder said = new StringBuilder(estimate == null ? "No record" : value(estimate));
    if (low != null && high != null) {
      said.append(", likely between ")
          .append(MEASURES.number(low, scale.decimals))
          .append(" and ")
          .append(value(high));
    }
    if (line != null) {
      said.append("; the line is at ").append(least ? "least " : "most ").append(bare(line));
    }
    if (hopeEnds != null) {
      said.append("; hope ends at ").append(bare(hopeEnds));
    }
    return said.append('.').toString();
  }

  private String value(double value) {
    return MEASURES.quantity(value, scale.decimals, scale.unit);
  }

  /** A line is set by a person: shown with the decimals it was given, not padded. */
  private static String bare(double line) {
    BigDecimal bare = BigDecimal.valueOf(line).stripTrailingZeros();
    return MEASURES.number(bare, Math.max(0, bare.scale()));
  }

  private List<Double> ticks() {
    double step = step(scale.high - scale.low);
    List<Double> ticks = new ArrayList<>();
    long first = (long) Math.ceil(scale.low / step - 1e-9);
    for (long n = first; n * step <= scale.high + step * 1e-9; n++) {
      ticks.add(n * step);
    }
    return ticks;
  }

  /** One, two or five times a power of ten that cuts the span into four to ten pieces. */
  private static double step(double span) {
    double power = Math.pow(10, Math.floor(Math.log10(span / 4)));
    double pieces = span / 4 / power;
    return power * (pieces >= 5 ? 5 : pieces >= 2 ? 2 : 1);
  }

  private static int decimalsOf(double span) {
    return Math.max(0, (int) -Math.floor(Math.log10(step(span)) + 1e-9));
  }

  private double at(double value) {
    double within = Math.min(scale.high, Math.max(scale.low, value));
    return EDGE + (WIDTH - 2 * EDGE) * (within - scale.low) / (scale.high - scale.low);
  }

  private String x(double value) {
    return pixels(at(value));
  }

  private String upright(double value) {
    return "M%s %dV%d".formatted(x(value), AXIS - 11, AXIS + 10);
  }

  private static String pixels(double value) {
    return BigDecimal.valueOf(Math.round(value * 10), 1).stripTrailingZeros().toPlainString();
  }
}
