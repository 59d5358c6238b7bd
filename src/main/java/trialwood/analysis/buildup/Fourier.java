package trialwood.analysis.buildup;

/** The discrete Fourier transform by halves (Cooley and Tukey 1965). */
final class Fourier {

  private Fourier() {}

  /**
   * Puts X_n = Σ_k x_k e^(2πi nk/size) in the place of x.
   *
   * @param x as many as a power of two
   */
  static void transform(Complex[] x) {
    int size = x.length;
    int bits = Integer.numberOfTrailingZeros(size);
    for (int i = 0; i < size; i++) {
      int mirrored = bits == 0 ? 0 : Integer.reverse(i) >>> (32 - bits);
      if (mirrored > i) {
        Complex kept = x[i];
        x[i] = x[mirrored];
        x[mirrored] = kept;
      }
    }
    for (int half = 1; half < size; half *= 2) {
      for (int k = 0; k < half; k++) {
        Complex turn = Complex.onCircle(Math.PI * k / half);
        for (int i = k; i < size; i += 2 * half) {
          Complex even = x[i];
          Complex odd = x[i + half].times(turn);
          x[i] = even.plus(odd);
          x[i + half] = even.minus(odd);
        }
      }
    }
  }
}
