package trialwood.analysis.buildup;

/** A complex number. */
record Complex(double re, double im) {

  static final Complex ONE = new Complex(1, 0);

  /** The point of the unit circle at an angle in radians. */
  static Complex onCircle(double angle) {
    return new Complex(Math.cos(angle), Math.sin(angle));
  }

  Complex plus(Complex other) {
    return new Complex(re + other.re, im + other.im);
  }

  Complex minus(Complex other) {
    return new Complex(re - other.re, im - other.im);
  }

  Complex times(Complex other) {
    return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
  }

  Complex power(int exponent) {
    Complex power = ONE;
    Complex square = this;
    for (int rest = exponent; rest > 0; rest >>= 1) {
      power = (rest & 1) == 1 ? power.times(square) : power;
      square = square.times(square);
    }
    return power;
  }

  /** 1 − p + pz: what becomes of one plant that lives with probability p. */
  Complex weighed(double p) {
    return new Complex(1 - p + p * re, p * im);
  }
}
