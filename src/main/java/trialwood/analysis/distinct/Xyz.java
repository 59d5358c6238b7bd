package trialwood.analysis.distinct;

import java.util.Locale;
import trialwood.analysis.Refuse;

/**
 * A colour by its tristimulus values under daylight D65, 2° observer, on the scale where white has
 * Y = 1.
 *
 * @param x X
 * @param y Y, the luminance
 * @param z Z
 */
public record Xyz(double x, double y, double z) {

  /** The white of D65. */
  static final Xyz WHITE = new Xyz(0.95047, 1, 1.08883);

  public Xyz {
    Refuse.unlessFinite(x, "X of a colour");
    Refuse.unlessFinite(y, "Y of a colour");
    Refuse.unlessFinite(z, "Z of a colour");
  }

  /**
   * The colour of a picture's pixel in sRGB.
   *
   * <p>Source: IEC 61966-2-1:1999, Multimedia systems and equipment, colour management: default RGB
   * colour space sRGB
   *
   * @param hex six hexadecimal digits, red, green and blue, with or without a leading hash
   * @throws IllegalArgumentException for anything else
   */
  public static Xyz ofSrgb(String hex) {
    String digits = hex.startsWith("#") ? hex.substring(1) : hex;
    Refuse.unless(
        digits.toLowerCase(Locale.ROOT).matches("[0-9a-f]{6}"),
        "A colour is written with six hexadecimal digits, not %s.",
        hex);
    double red = linear(digits.substring(0, 2));
    double green = linear(digits.substring(2, 4));
    double blue = linear(digits.substring(4, 6));
    return new Xyz(
        0.4124564 * red + 0.3575761 * green + 0.1804375 * blue,
        0.2126729 * red + 0.7151522 * green + 0.0721750 * blue,
        0.0193339 * red + 0.1191920 * green + 0.9503041 * blue);
  }

  /** The light of one channel, 0 to 1. */
  private static double linear(String digits) {
    double channel = Integer.parseInt(digits, 16) / 255.0;
    return channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
  }
}
