package trialwood.unit;

/**
 * The check character of ISO/IEC 7064, MOD 37-2, a pure system: every wrong character and every
 * swap of neighbours changes the remainder, the check character itself included.
 *
 * <p>The value of a string is the sum of each sign's value times two to the power of its place
 * counted from the right; with the check character at place 0, the sum leaves 1 when divided by 37.
 */
final class CheckCharacter {

  /** Signs in the order of their values, 0 to 36; the last occurs only as a check. */
  private static final String SIGNS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";

  private static final int MODULUS = 37;

  private CheckCharacter() {}

  /**
   * @param text capital letters and digits
   */
  static char of(String text) {
    int sum = text.chars().reduce(0, (so, sign) -> (so + SIGNS.indexOf(sign)) * 2 % MODULUS);
    return SIGNS.charAt((MODULUS + 1 - sum) % MODULUS);
  }
}
