package trialwood.propagation.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.time.RootingCurve;
import trialwood.analysis.time.TimeFit;
import trialwood.propagation.RootingTimes;

/**
 * The share rooted by each day as steps, the looks' brackets as shaded boxes: within a box nobody
 * knows where the step lies. Geometry in pixels, so that the template does no arithmetic.
 *
 * @param fit a smooth law to draw over the steps, or none
 */
record RootingPicture(RootingTimes times, int width, int height, @Nullable TimeFit fit) {

  private static final int LEFT = 6;
  private static final int TOP = 8;
  private static final int FOOT = 22;
  private static final int WEEK = 7;

  /** For a row of a table. */
  static RootingPicture small(RootingTimes times) {
    return new RootingPicture(times, 180, 76, null);
  }

  /** For a page of its own. */
  static RootingPicture large(RootingTimes times, @Nullable TimeFit fit) {
    return new RootingPicture(times, 320, 220, fit);
  }

  /** What a bracket covers. */
  record Box(String x, String y, String width, String height) {}

  /** A day under the axis; the anchor is SVG's {@code text-anchor}. */
  record Tick(String x, String label, String anchor) {}

  public List<Box> boxes() {
    var boxes = new ArrayList<Box>();
    double rooted = 0;
    for (RootingCurve.Mass mass : times.curve().masses()) {
      if (Double.isFinite(mass.by())) {
        boxes.add(
            new Box(
                pixels(x(mass.after())),
                pixels(y(rooted + mass.share())),
                pixels(x(mass.by()) - x(mass.after())),
                pixels(y(rooted) - y(rooted + mass.share()))));
        rooted += mass.share();
      }
    }
    return boxes;
  }

  /** The level stretches, between which only the boxes speak. */
  public String steps() {
    var path = new StringBuilder();
    double rooted = 0;
    double from = 0;
    for (RootingCurve.Mass mass : times.curve().masses()) {
      if (Double.isFinite(mass.by())) {
        path.append(level(from, mass.after(), rooted));
        rooted += mass.share();
        from = mass.by();
      }
    }
    return path.append(level(from, times.lastDay(), rooted)).toString();
  }

  private String level(double from, double to, double share) {
    return "M%s %sH%s".formatted(pixels(x(from)), pixels(y(share)), pixels(x(to)));
  }

  /** The line at one half. */
  public String half() {
    return level(0, times.lastDay(), 0.5);
  }

  public String axis() {
    var path =
        new StringBuilder(
            "M%s %sV%sH%s"
                .formatted(pixels(x(0)), pixels(y(1)), pixels(y(0)), pixels(x(times.lastDay()))));
    for (int day = WEEK; day <= times.lastDay(); day += WEEK) {
      path.append("M%s %sv4".formatted(pixels(x(day)), pixels(y(0))));
    }
    return path.toString();
  }

  public String smooth() {
    if (fit == null) {
      return "";
    }
    var path = new StringBuilder();
    int points = 80;
    for (int i = 1; i <= points; i++) {
      double day = (double) times.lastDay() * i / points;
      path.append(path.isEmpty() ? "M" : "L")
          .append(pixels(x(day)))
          .append(' ')
          .append(pixels(y(fit.rootedBy(0, day))));
    }
    return path.toString();
  }

  public List<Tick> ticks() {
    return List.of(
        new Tick(pixels(x(0)), "0", "start"),
        new Tick(pixels(x(times.lastDay())), "day " + times.lastDay(), "end"));
  }

  public String halfLabelY() {
    return pixels(y(0.5) - 4);
  }

  public int footY() {
    return height - 4;
  }

  public String sentence() {
    return "Rooted by day %d: %.0f %% of the stuck; half: %s."
        .formatted(
            times.lastDay(), 100 * times.curve().rootedBy(times.lastDay()), times.halfInWords());
  }

  private double x(double day) {
    return LEFT + (width - 2.0 * LEFT) * day / times.lastDay();
  }

  private double y(double share) {
    return TOP + (height - TOP - FOOT) * (1 - share);
  }

  private static String pixels(double value) {
    return BigDecimal.valueOf(Math.round(value * 10), 1).stripTrailingZeros().toPlainString();
  }
}
