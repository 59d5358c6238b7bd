package trialwood.analysis.distinct;

/**
 * How different two colours look. Information for the person who decides: no office gives a number
 * from which two colours count as clearly different.
 */
public final class ColourDifference {

  private static final double FAR = Math.pow(25, 7);

  private ColourDifference() {}

  /** ΔE*ab, the distance of the two in L*a*b* (CIE 1976). */
  public static double e76(Lab one, Lab other) {
    return Math.hypot(
        one.lightness() - other.lightness(), Math.hypot(one.a() - other.a(), one.b() - other.b()));
  }

  /**
   * ΔE₀₀ (CIEDE2000) with all weights 1: the distance corrected for lightness, chroma, hue and for
   * blues, where the eye is less regular than L*a*b*. Symmetric; 0 for equal colours.
   *
   * <p>Source: Sharma, G., Wu, W. and Dalal, E. N. (2005) The CIEDE2000 color-difference formula.
   * Color Research and Application 30, 21–30
   */
  public static double e2000(Lab one, Lab other) {
    double stretch = 1.5 - 0.5 * nearGrey((one.chroma() + other.chroma()) / 2);
    double a1 = one.a() * stretch;
    double a2 = other.a() * stretch;
    double chroma1 = Math.hypot(a1, one.b());
    double chroma2 = Math.hypot(a2, other.b());
    boolean grey = chroma1 * chroma2 == 0;
    double hue1 = degrees(a1, one.b());
    double hue2 = degrees(a2, other.b());
    double turn = grey ? 0 : turn(hue1, hue2);
    double hue = grey ? hue1 + hue2 : middle(hue1, hue2);
    double lightness = (one.lightness() + other.lightness()) / 2;
    double chroma = (chroma1 + chroma2) / 2;

    double fromMiddle = (lightness - 50) * (lightness - 50);
    double weightL = 1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle);
    double weightC = 1 + 0.045 * chroma;
    double waves =
        1
            - 0.17 * cosine(hue - 30)
            + 0.24 * cosine(2 * hue)
            + 0.32 * cosine(3 * hue + 6)
            - 0.20 * cosine(4 * hue - 63);
    double weightH = 1 + 0.015 * chroma * waves;
    double blue = (hue - 275) / 25;
    double rotation = -2 * nearGrey(chroma) * Math.sin(Math.toRadians(60 * Math.exp(-blue * blue)));

    double byLightness = (other.lightness() - one.lightness()) / weightL;
    double byChroma = (chroma2 - chroma1) / weightC;
    double byHue = 2 * Math.sqrt(chroma1 * chroma2) * Math.sin(Math.toRadians(turn / 2)) / weightH;
    return Math.sqrt(
        Math.max(
            0,
            byLightness * byLightness
                + byChroma * byChroma
                + byHue * byHue
                + rotation * byChroma * byHue));
  }

  /** The angle of (a, b) in degrees from 0 up to 360; 0 for the origin. */
  static double degrees(double a, double b) {
    if (a == 0 && b == 0) {
      return 0;
    }
    double angle = Math.toDegrees(Math.atan2(b, a));
    return angle < 0 ? angle + 360 : angle;
  }

  /** √(C⁷/(C⁷ + 25⁷)): 0 for a grey, near 1 for a strong colour. */
  private static double nearGrey(double chroma) {
    double seventh = Math.pow(chroma, 7);
    return Math.sqrt(seventh / (seventh + FAR));
  }

  /** From one hue to the other the short way round, −180 to 180. */
  private static double turn(double from, double to) {
    double turn = to - from;
    return turn > 180 ? turn - 360 : turn < -180 ? turn + 360 : turn;
  }

  /** The hue half way the short way round. */
  private static double middle(double one, double other) {
    double sum = one + other;
    if (Math.abs(one - other) <= 180) {
      return sum / 2;
    }
    return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  }

  private static double cosine(double degrees) {
    return Math.cos(Math.toRadians(degrees));
  }
}
