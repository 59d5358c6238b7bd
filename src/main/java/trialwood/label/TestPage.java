package trialwood.label;

import java.io.IOException;

/** What is printed once to measure a printer by: crosses, rulers and the outlines of the labels. */
final class TestPage {

  /** Where the first cross stands on a page that comes out true, mm from either edge. */
  private static final int CROSS = 20;

  private static final double ARM = 5;
  private static final int MINOR = 1;
  private static final int MAJOR = 10;

  private final Layout layout;
  private final Printer printer;

  TestPage(Layout layout, Printer printer) {
    this.layout = layout;
    this.printer = printer;
  }

  void draw(Ink ink, Type type) throws IOException {
    double wide = layout.paperWidth().doubleValue();
    double high = layout.paperHeight().doubleValue();
    for (int place = 0; place < layout.places(); place++) {
      ink.box(
          layout.leftOf(place),
          layout.topOf(place),
          layout.width().doubleValue(),
          layout.height().doubleValue());
    }
    double cross = Math.min(CROSS, Math.floor(Math.min(wide, high) / 4));
    cross(ink, cross, cross);
    cross(ink, wide - cross, high - cross);
    int right = tens(wide - 2 * cross);
    int down = tens(high - 2 * cross);
    for (int at = 0; at <= right; at += MINOR) {
      ink.line(cross + at, cross, cross + at, cross + tick(at));
    }
    for (int at = 0; at <= down; at += MINOR) {
      ink.line(cross, cross + at, cross + tick(at), cross + at);
    }
    if (high > 60) {
      say(ink, type, cross, right, down);
    }
  }

  private void say(Ink ink, Type type, double cross, int right, int down) throws IOException {
    String[] lines = {
      "Printer %s: moved %s mm right, %s mm down, scale %s %%"
          .formatted(
              type.plain().settable(printer.name()),
              printer.moveRight().toPlainString(),
              printer.moveDown().toPlainString(),
              printer.scalePercent().toPlainString()),
      "1. The rulers are %d mm and %d mm long. Measure them: that is the scale."
          .formatted(right, down),
      "2. The first cross stands %.0f mm from the left and from the upper edge of the paper."
          .formatted(cross),
      "    Measure both: what is missing is how far to move the page.",
      "3. Hold the page and a sheet of labels against the light: the outlines must agree."
    };
    double at = cross + 20;
    ink.blank(cross + 8, at - 6, 130, 32);
    for (String line : lines) {
      ink.words(line, type.plain(), 8, cross + 10, at);
      at += 5;
    }
  }

  private static void cross(Ink ink, double left, double top) throws IOException {
    ink.line(left - ARM, top, left + ARM, top);
    ink.line(left, top - ARM, left, top + ARM);
  }

  private static double tick(int at) {
    return at % MAJOR == 0 ? 5 : at % 5 == 0 ? 3.5 : 2;
  }

  private static int tens(double length) {
    return (int) (length / MAJOR) * MAJOR;
  }
}
