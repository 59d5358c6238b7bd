package trialwood.label;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The lines of one label, set as large as its space allows. */
final class Words {

  /** Sizes in points; below the smallest, only what the label cannot do without is set. */
  private static final double LARGEST = 12;

  private static final double SMALLEST = 4.5;
  private static final double STEP = 0.5;

  /** So many lines come first, are set in bold, and are never left out. */
  private static final int CHIEF = 2;

  /** Size of the other lines, beside theirs. */
  private static final double LESSER = 0.8;

  private record Line(String words, Letters letters, double size) {}

  private final List<Line> lines;

  private Words(List<Line> lines) {
    this.lines = lines;
  }

  /**
   * Sets lines into a space, in a size that lets them fit. Where not even the smallest does, the
   * last of them are left out; the chief ones are made smaller still.
   *
   * @param wide of the space, mm
   * @param high of the space, mm
   */
  static Words fitted(List<String> texts, Type type, double wide, double high) {
    double size = LARGEST;
    int kept = texts.size();
    Words words = set(texts, type, size, wide);
    while (words.height() > high && size > STEP) {
      if (size > SMALLEST || kept <= CHIEF) {
        size -= STEP;
      } else {
        kept--;
      }
      words = set(texts.subList(0, kept), type, size, wide);
    }
    return words;
  }

  private static Words set(List<String> texts, Type type, double size, double wide) {
    List<Line> lines = new ArrayList<>();
    for (int nth = 0; nth < texts.size(); nth++) {
      Letters letters = nth < CHIEF ? type.bold() : type.plain();
      double points = nth < CHIEF ? size : Math.max(SMALLEST, size * LESSER);
      for (String line : letters.broken(letters.settable(texts.get(nth)), points, wide)) {
        lines.add(new Line(line, letters, points));
      }
    }
    return new Words(lines);
  }

  /** Millimetres from the upper edge of the first line to the lower one of the last. */
  private double height() {
    return lines.stream().mapToDouble(line -> line.size() * Type.LEADING).sum() / Ink.POINTS;
  }

  void draw(Ink ink, double left, double top) throws IOException {
    double at = top;
    for (Line line : lines) {
      ink.words(line.words(), line.letters(), line.size(), left, at + line.size() / Ink.POINTS);
      at += line.size() * Type.LEADING / Ink.POINTS;
    }
  }
}
