package trialwood.analysis.bench;

import trialwood.analysis.Refuse;

/** Units of length; an inch is 25.4 mm and a foot twelve of them, by definition (1959). */
public enum Length {
  CM("cm", 0.01),
  M("m", 1),
  INCH("in", 0.0254),
  FOOT("ft", 0.3048);

  private final String sign;
  private final double metres;

  Length(String sign, double metres) {
    this.sign = sign;
    this.metres = metres;
  }

  public String sign() {
    return sign;
  }

  public double toMetres(double length) {
    Refuse.unlessFinite(length, "length");
    return length * metres;
  }

  public double fromMetres(double length) {
    return length / metres;
  }
}
