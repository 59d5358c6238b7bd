package trialwood.label;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The letters of one weight, embedded into one document, and how wide words run in them. */
final class Letters {

  /** Stands for a sign that these letters lack. */
  private static final String UNKNOWN = "?";

  /** What parts two words stands for nothing at the end of a line. */
  private static final Pattern BETWEEN = Pattern.compile("[ ·]+$");

  private final PDFont font;

  /** Width of each sign met so far, in sizes of the letters; below zero for one that is lacking. */
  private final Map<Integer, Double> widths = new HashMap<>();

  /**
   * @param file such as DejaVuSans.ttf, in the jar
   */
  Letters(PDDocument document, String file) throws IOException {
    try (InputStream bytes =
        Objects.requireNonNull(Letters.class.getResourceAsStream("/fonts/" + file), file)) {
      this.font = PDType0Font.load(document, bytes);
    }
  }

  PDFont font() {
    return font;
  }

  /** The words with a question mark for each sign that cannot be set. */
  String settable(String words) {
    StringBuilder set = new StringBuilder();
    words
        .codePoints()
        .forEach(sign -> set.append(advance(sign) < 0 ? UNKNOWN : Character.toString(sign)));
    return set.toString();
  }

  /**
   * Width in millimetres of words that can be set.
   *
   * @param size in points
   */
  double width(String words, double size) {
    return words.codePoints().mapToDouble(this::advance).sum() * size / Ink.POINTS;
  }

  private double advance(int sign) {
    return widths.computeIfAbsent(
        sign,
        it -> {
          try {
            return font.getStringWidth(Character.toString(it)) / 1000.0;
          } catch (IllegalArgumentException noGlyph) {
            return -1.0;
          } catch (IOException unread) {
            throw new UncheckedIOException(unread);
          }
        });
  }

  /** Breaks words into lines of a width: between words where it can, anywhere where it must. */
  List<String> broken(String words, double size, double wide) {
    List<String> lines = new ArrayList<>();
    String rest = words;
    while (width(rest, size) > wide && rest.length() > 1) {
      int fits = fitting(rest, size, wide);
      int blank = rest.lastIndexOf(' ', fits);
      int cut = blank > 0 ? blank : fits;
      lines.add(BETWEEN.matcher(rest.substring(0, cut)).replaceFirst(""));
      rest = rest.substring(cut).stripLeading();
    }
    lines.add(rest);
    return lines;
  }

  /** How much of the words fits, from the first on; at least one sign. */
  private int fitting(String words, double size, double wide) {
    int fits = words.offsetByCodePoints(0, 1);
    while (fits < words.length()) {
      int next = words.offsetByCodePoints(fits, 1);
      if (width(words.substring(0, next), size) > wide) {
        break;
      }
      fits = next;
    }
    return fits;
  }
}
