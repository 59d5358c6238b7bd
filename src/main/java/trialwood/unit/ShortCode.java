package trialwood.unit;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trialwood.record.Refused;

/**
 * What stands on a label for scanners and for people: a number, written in 32 letters and figures
 * of which no two look alike, and a check character. {@code G007R} is one.
 *
 * @param text capital letters and figures, the check character last
 */
public record ShortCode(String text) {

  /** Without I, L, O and U, which are read as 1, 1, 0 and V. */
  private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final Pattern CODE = Pattern.compile("[" + SIGNS + "]{5,8}");
  private static final Pattern SYMBOLOGY = Pattern.compile("^][A-Za-z][0-9A-Za-z]");
  private static final Pattern ADDRESS = Pattern.compile("(?i)^https?://.*/s/([^/?#]*).*");
  private static final Pattern AROUND = Pattern.compile("^[^\\p{L}\\p{N}]+|[^\\p{L}\\p{N}]+$");
  private static final Pattern BETWEEN = Pattern.compile("[\\s\u00a0\u202f-]");

  /**
   * @throws Refused when it is no code, or its check character does not agree
   */
  public ShortCode {
    if (!CODE.matcher(text).matches()) {
      throw new Refused(
          "short_code",
          "A code on a label is five or six letters and figures, such as G007R. Type it again.");
    }
    if (CheckCharacter.of(text.substring(0, text.length() - 1)) != text.charAt(text.length() - 1)) {
      throw new Refused(
          "short_code",
          "%s is no code: a character is wrong, or two have changed places. Read it once more."
              .formatted(text));
    }
  }

  /**
   * Reads what was typed or scanned: in small letters, with blanks or dashes, with the letters that
   * look like figures, behind a sign that the scanner adds, or as the address of a page.
   *
   * @throws Refused when it is no code, or its check character does not agree
   */
  public static ShortCode read(String typed) {
    String bare = SYMBOLOGY.matcher(typed.strip()).replaceFirst("");
    Matcher address = ADDRESS.matcher(bare);
    String code = address.matches() ? address.group(1) : bare;
    String close = BETWEEN.matcher(AROUND.matcher(code).replaceAll("")).replaceAll("");
    return new ShortCode(
        close
            .toUpperCase(Locale.ROOT)
            .replace('O', '0')
            .replace('I', '1')
            .replace('L', '1')
            .replace('U', 'V'));
  }

  /** The same, or nothing where it is no code. */
  public static Optional<ShortCode> readIfAny(String typed) {
    try {
      return Optional.of(read(typed));
    } catch (Refused noCode) {
      return Optional.empty();
    }
  }

  /**
   * The code of a number; none for one of the numbers, about every seventh, whose check character
   * would not be among the 32 signs.
   */
  static Optional<ShortCode> of(long number) {
    StringBuilder stem = new StringBuilder();
    for (long rest = number; rest > 0; rest /= SIGNS.length()) {
      stem.append(SIGNS.charAt((int) (rest % SIGNS.length())));
    }
    String digits = stem.reverse().toString();
    char check = CheckCharacter.of(digits);
    return SIGNS.indexOf(check) < 0 ? Optional.empty() : Optional.of(new ShortCode(digits + check));
  }

  @Override
  public String toString() {
    return text;
  }
}
