package trialwood.record;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The spelling under which a code is found again, however it was typed: capitals, no blanks or
 * invisible marks, letter O beside a digit read as zero, numbers without leading zeros. {@code
 * c18-3}, {@code C18 - 03} and {@code C18-O3} share the key {@code C18-3}.
 */
public final class CodeKey {

  private static final Pattern NOT_IN_A_CODE = Pattern.compile("[^\\p{L}\\p{N}#/._+-]");
  private static final Pattern LETTER_O = Pattern.compile("(?<=\\d)O|(?<=[-/])O(?=\\d)");
  private static final Pattern LEADING_ZEROS = Pattern.compile("(?<!\\d)0+(?=\\d)");

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} ._+-]*");

  /** What to say of a code that is not plain. */
  public static final String PLAIN_RULE =
      "Write letters, figures, blanks and - . _ + only, a letter or figure first: the code stands"
          + " in the addresses of pages.";

  private CodeKey() {}

  /**
   * Whether a code can stand in the address of a page and be found there again: no slash, no
   * percent sign, nothing that an address takes for itself.
   */
  public static boolean isPlain(String code) {
    return PLAIN.matcher(code).matches();
  }

  /** The key of a code as typed; empty when nothing in it can belong to a code. */
  public static String of(String typed) {
    String plain = NOT_IN_A_CODE.matcher(typed).replaceAll("").toUpperCase(Locale.ROOT);
    return LEADING_ZEROS.matcher(LETTER_O.matcher(plain).replaceAll("0")).replaceAll("");
  }
}
