package trialwood.label;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import trialwood.record.Refused;

/** Puts labels on paper, as a PDF in true size. */
public final class LabelPaper {

  /** Left free along the edges of a label, mm: no printer cuts true. */
  private static final double EDGE = 1.5;

  /** Of a label's width, the most that the square takes. */
  private static final double SHARE = 0.45;

  /** Side of the largest square with its border, mm; a larger one reads no better by hand. */
  private static final double LARGEST = 30;

  /** Size of the code beside the square, points. */
  private static final double CODE = 12;

  private final Layout layout;
  private final Printer printer;

  public LabelPaper(Layout layout, Printer printer) {
    this.layout = layout;
    this.printer = printer;
  }

  /**
   * One PDF with all the labels.
   *
   * @param start the place on the first sheet to begin at, counted from 1 along the rows
   * @throws Refused when the sheet has no such place
   */
  public byte[] print(List<Label> labels, int start) {
    if (start < 1 || start > layout.places()) {
      throw new Refused(
          "start",
          "The sheet has places 1 to %d. Begin at one of them.".formatted(layout.places()));
    }
    return document(document -> lay(document, labels, start - 1));
  }

  /** One page to hold against the paper: a ruler each way, crosses, and where labels will lie. */
  public byte[] test() {
    return document(
        document -> {
          Type type = new Type(document);
          try (Ink ink = new Ink(document, layout, printer)) {
            new TestPage(layout, printer).draw(ink, type);
          }
        });
  }

  private interface Drawing {
    void on(PDDocument document) throws IOException;
  }

  private static byte[] document(Drawing drawing) {
    try (PDDocument document = new PDDocument()) {
      // no viewer is to fit the page to its printer: a millimetre stays one
      PDViewerPreferences viewer = new PDViewerPreferences(new COSDictionary());
      viewer.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
      document.getDocumentCatalog().setViewerPreferences(viewer);
      drawing.on(document);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      document.save(out);
      return out.toByteArray();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private void lay(PDDocument document, List<Label> labels, int start) throws IOException {
    Type type = new Type(document);
    int places = layout.places();
    int nth = 0;
    while (nth < labels.size()) {
      try (Ink ink = new Ink(document, layout, printer)) {
        for (int place = (start + nth) % places;
            place < places && nth < labels.size();
            place++, nth++) {
          draw(labels.get(nth), ink, type, layout.leftOf(place), layout.topOf(place));
        }
      }
    }
  }

  private void draw(Label label, Ink ink, Type type, double left, double top) throws IOException {
    double wide = layout.width().doubleValue();
    double high = layout.height().doubleValue();
    Square square = new Square(label.payload());
    double module = square.module(Math.min(LARGEST, Math.min(high, wide * SHARE)));
    double side = square.side(module);
    square.draw(ink, left, top + Math.max(0, (high - side) / 2), module);
    double from = left + side;
    double room = wide - side - EDGE;
    double foot = top + high - EDGE;
    double codeSize = Math.min(CODE, CODE * room / type.bold().width(label.code(), CODE));
    ink.words(label.code(), type.bold(), codeSize, from, foot - 1);
    double textTop = top + EDGE;
    double textHigh = foot - 1 - codeSize / Ink.POINTS - textTop;
    Words.fitted(label.lines(), type, room, textHigh).draw(ink, from, textTop);
  }
}
