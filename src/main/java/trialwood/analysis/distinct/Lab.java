package trialwood.analysis.distinct;

import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;

/**
 * A colour in CIE 1976 L*a*b*, where equal distances look about equally different, under D65, 2°
 * observer.
 *
 * <p>Source: CIE 15:2004, Colorimetry, 3rd ed.
 *
 * @param lightness L*, 0 for black, 100 for white
 * @param a a*, green below 0, red above
 * @param b b*, blue below 0, yellow above
 */
public record Lab(double lightness, double a, double b) {

  private static final double LINEAR_BELOW = 216.0 / 24389;
  private static final double KAPPA = 24389.0 / 27;
  private static final double GREY = 0.01;

  public Lab {
    Refuse.unlessFinite(lightness, "lightness of a colour");
    Refuse.unlessFinite(a, "a* of a colour");
    Refuse.unlessFinite(b, "b* of a colour");
  }

  public static Lab of(Xyz colour) {
    double x = root(colour.x() / Xyz.WHITE.x());
    double y = root(colour.y() / Xyz.WHITE.y());
    double z = root(colour.z() / Xyz.WHITE.z());
    return new Lab(116 * y - 16, 500 * (x - y), 200 * (y - z));
  }

  /** See {@link Xyz#ofSrgb}. */
  public static Lab ofSrgb(String hex) {
    return of(Xyz.ofSrgb(hex));
  }

  /** C*, the distance from grey. */
  public double chroma() {
    return Math.hypot(a, b);
  }

  /** The hue angle in degrees, 0 red, 90 yellow, 180 green, 270 blue; lacking for a grey. */
  public Answer<Double> hue() {
    return chroma() < GREY
        ? Answer.lacking("A grey has no hue.")
        : Answer.known(ColourDifference.degrees(a, b));
  }

  private static double root(double light) {
    return light > LINEAR_BELOW ? Math.cbrt(light) : (KAPPA * light + 16) / 116;
  }
}
