package trialwood.label;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.util.Matrix;

/**
 * Black on one page: lengths in millimetres from the paper's left and upper edge, moved and scaled
 * for the printer.
 */
final class Ink implements AutoCloseable {

  /** Points, of which there are 72 to an inch, in a millimetre. */
  static final double POINTS = 72 / 25.4;

  private final PDPageContentStream content;
  private final double height;

  Ink(PDDocument document, Layout layout, Printer printer) throws IOException {
    this.height = layout.paperHeight().doubleValue();
    PDPage page =
        new PDPage(
            new PDRectangle(
                (float) (layout.paperWidth().doubleValue() * POINTS), (float) (height * POINTS)));
    document.addPage(page);
    this.content = new PDPageContentStream(document, page);
    double scale = printer.scalePercent().doubleValue() / 100;
    content.transform(
        new Matrix(
            (float) scale,
            0,
            0,
            (float) scale,
            (float) (printer.moveRight().doubleValue() * POINTS),
            // the upper left corner stays where it is, and pages are measured from the lower one
            (float) ((height - printer.moveDown().doubleValue() - scale * height) * POINTS)));
  }

  /** Adds a rectangle to what {@link #fill} will fill. */
  void bar(double left, double top, double width, double high) throws IOException {
    content.addRect(x(left), y(top + high), (float) (width * POINTS), (float) (high * POINTS));
  }

  void fill() throws IOException {
    content.fill();
  }

  /** Makes a rectangle white again. */
  void blank(double left, double top, double width, double high) throws IOException {
    content.setNonStrokingColor(1f);
    bar(left, top, width, high);
    content.fill();
    content.setNonStrokingColor(0f);
  }

  /** Outlines a rectangle with a hairline. */
  void box(double left, double top, double width, double high) throws IOException {
    content.setLineWidth(0.25f);
    bar(left, top, width, high);
    content.stroke();
  }

  /** A fine line from there to there. */
  void line(double fromLeft, double fromTop, double toLeft, double toTop) throws IOException {
    content.setLineWidth(0.5f);
    content.moveTo(x(fromLeft), y(fromTop));
    content.lineTo(x(toLeft), y(toTop));
    content.stroke();
  }

  /**
   * Words in one line.
   *
   * @param baseline millimetres from the upper edge
   * @param size in points
   */
  void words(String words, Letters letters, double size, double left, double baseline)
      throws IOException {
    content.beginText();
    content.setFont(letters.font(), (float) size);
    content.newLineAtOffset(x(left), y(baseline));
    content.showText(words);
    content.endText();
  }

  private static float x(double left) {
    return (float) (left * POINTS);
  }

  private float y(double top) {
    return (float) ((height - top) * POINTS);
  }

  @Override
  public void close() throws IOException {
    content.close();
  }
}
