package trialwood.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.label.Print.Box;
import trialwood.record.Refused;

class LabelPaperTest {

  private static final int DPI = 300;

  private static final Layout SHEET = layout("210 297 3 8 6 9 64 34 67 35");
  private static final Layout LARGE = layout("210 297 2 6 8 12 94 44 100 46");
  private static final Layout SINGLE = layout("60 30 1 1 0 0 60 30 60 30");
  private static final Printer TRUE = printer("0", "0", "100");

  @Test
  void every_square_is_read_back_by_a_reader_that_did_not_draw_it() throws Exception {
    for (Layout layout : List.of(SHEET, LARGE, SINGLE)) {
      List<Label> labels = labels(layout.places() * 2 + 1);
      Print print = new Print(new LabelPaper(layout, TRUE).print(labels, 1), DPI);
      assertThat(print.pages()).isEqualTo(3);
      for (int nth = 0; nth < labels.size(); nth++) {
        int place = nth % layout.places();
        assertThat(print.decoded(nth / layout.places(), box(layout, place)))
            .isEqualTo(labels.get(nth).payload());
      }
    }
  }

  @Test
  void a_whole_address_is_read_back_too() throws Exception {
    Label label = new Label("HTTPS://NURSERY.EXAMPLE:8443/S/G0012", "G0012", List.of("22-A-1"));
    for (Layout layout : List.of(SHEET, LARGE, SINGLE)) {
      Print print = new Print(new LabelPaper(layout, TRUE).print(List.of(label), 1), DPI);
      assertThat(print.decoded(0, box(layout, 0))).isEqualTo(label.payload());
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "60 34 1 1 0 0 60 34 60 34",
        "60 30 1 1 0 0 60 30 60 30",
        "45 21 1 1 0 0 45 21 45 21",
        "100 100 1 1 0 0 100 100 100 100"
      })
  void a_square_is_fifteen_millimetres_or_more_with_four_modules_of_white(String lengths)
      throws Exception {
    Layout layout = layout(lengths);
    for (String payload : List.of("G0012", "HTTPS://N.EXAMPLE/S/G0012")) {
      Print print =
          new Print(
              new LabelPaper(layout, TRUE)
                  .print(List.of(new Label(payload, "G0012", List.of())), 1),
              600);
      double wide = new Square(payload).side(new Square(payload).module(boxOf(layout)));
      Box black = print.blackOf(0, new Box(0, 0, wide - .2, layout.paperHeight().doubleValue()));
      double module = black.width() / (payload.length() > 5 ? 25 : 21);
      assertThat(black.width()).isGreaterThanOrEqualTo(14.95).isCloseTo(black.height(), within(.1));
      assertThat(black.left() - layout.leftOf(0)).isCloseTo(4 * module, within(.1));
    }
  }

  /** Side of the box that a square is drawn into. */
  private static double boxOf(Layout layout) {
    return Math.min(
        30, Math.min(layout.height().doubleValue(), layout.width().doubleValue() * .45));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 100, 1",
    "0, 0, 100, 24",
    "1.5, -0.75, 100, 8",
    "-2, 3.25, 101.35, 17",
    "0, 0, 98.5, 24"
  })
  void a_label_lies_where_its_format_and_its_printer_put_it(
      String right, String down, String scale, int start) throws Exception {
    LabelPaper paper = new LabelPaper(SHEET, printer(right, down, scale));
    Print print =
        new Print(paper.print(List.of(new Label("G0012", "G0012", List.of())), start), 600);
    Print plain =
        new Print(
            new LabelPaper(SHEET, TRUE).print(List.of(new Label("G0012", "G0012", List.of())), 1),
            600);
    Box first = plain.blackOf(0, new Box(6, 9, 28.8, 34));
    double factor = Double.parseDouble(scale) / 100;
    int place = start - 1;
    double left = (first.left() + place % 3 * 67) * factor + Double.parseDouble(right);
    double top = (first.top() + place / 3 * 35) * factor + Double.parseDouble(down);

    Box square =
        print.blackOf(0, new Box(left - 2, top - 2, first.width() + 4.5, first.height() + 4));
    assertThat(square.left()).isCloseTo(left, within(.1));
    assertThat(square.top()).isCloseTo(top, within(.1));
    assertThat(square.width()).isCloseTo(first.width() * factor, within(.1));
  }

  /** By hand: 28.8 mm for 29 modules, so the black begins 4 · 28.8 / 29 = 3.97 mm in. */
  @Test
  void the_first_square_lies_where_a_ruler_finds_it() throws Exception {
    Print print =
        new Print(
            new LabelPaper(SHEET, TRUE).print(List.of(new Label("G0012", "G0012", List.of())), 1),
            600);
    Box black = print.blackOf(0, new Box(6, 9, 28.8, 34));
    assertThat(black.left()).isCloseTo(6 + 3.97, within(.1));
    assertThat(black.top()).isCloseTo(9 + (34 - 28.8) / 2 + 3.97, within(.1));
    assertThat(black.width()).isCloseTo(20.86, within(.1));
  }

  @Test
  void a_used_sheet_is_begun_where_it_is_free_and_the_rest_goes_on_the_next() throws Exception {
    Print print = new Print(new LabelPaper(SHEET, TRUE).print(labels(10), 20), DPI);
    assertThat(print.pages()).isEqualTo(2);
    assertThat(print.isEmpty(0, new Box(0, 0, 210, SHEET.topOf(18) - 1))).isTrue();
    assertThat(print.isEmpty(0, box(SHEET, 18))).isTrue();
    assertThat(print.decoded(0, box(SHEET, 19))).isEqualTo(labels(1).get(0).payload());
    assertThat(print.decoded(1, box(SHEET, 4))).isEqualTo(labels(10).get(9).payload());
    assertThat(print.isEmpty(1, box(SHEET, 5))).isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1, 25})
  void a_place_that_the_sheet_has_not_is_refused(int start) {
    LabelPaper paper = new LabelPaper(SHEET, TRUE);
    assertThatThrownBy(() -> paper.print(labels(1), start))
        .isInstanceOf(Refused.class)
        .hasMessage("The sheet has places 1 to 24. Begin at one of them.");
  }

  @Test
  void long_names_stay_on_their_label() throws Exception {
    Label longest =
        new Label(
            "G0012",
            "G0012",
            List.of(
                "W".repeat(60),
                "M".repeat(30),
                "run " + "Q".repeat(30) + " · batch " + "W".repeat(40),
                "stuck 14 September 2026",
                "the far bench in the old house · block 10, place 24"));
    for (Layout layout : List.of(SHEET, SINGLE, layout("45 21 1 1 0 0 45 21 45 21"))) {
      byte[] pdf = new LabelPaper(layout, TRUE).print(List.of(longest), 1);
      Box black = new Print(pdf, DPI).blackOf(0, whole(layout));
      assertThat(black.left()).isGreaterThanOrEqualTo(layout.leftOf(0));
      assertThat(black.top()).isGreaterThanOrEqualTo(layout.topOf(0));
      assertThat(black.left() + black.width())
          .isLessThanOrEqualTo(layout.leftOf(0) + layout.width().doubleValue());
      assertThat(black.top() + black.height())
          .isLessThanOrEqualTo(layout.topOf(0) + layout.height().doubleValue());
      assertThat(text(pdf)).contains("G0012");
      assertThat(text(pdf).replaceAll("\\s", "")).contains("W".repeat(60), "M".repeat(30));
    }
  }

  @Test
  void a_sign_that_the_letters_lack_does_not_stop_the_print() throws IOException {
    byte[] pdf =
        new LabelPaper(SHEET, TRUE)
            .print(List.of(new Label("G0012", "G0012", List.of("Ünïß-\ud83c\udf3f-葉-1"))), 1);
    assertThat(text(pdf)).contains("Ünïß-?-");
  }

  @Test
  void the_letters_are_in_the_file_and_no_viewer_is_to_scale_it() throws IOException {
    byte[] pdf = new LabelPaper(SHEET, TRUE).print(labels(1), 1);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      document
          .getPage(0)
          .getResources()
          .getFontNames()
          .forEach(
              name -> {
                try {
                  assertThat(document.getPage(0).getResources().getFont(name).isEmbedded())
                      .isTrue();
                } catch (IOException unread) {
                  throw new AssertionError(unread);
                }
              });
      assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
          .isEqualTo("None");
      assertThat(document.getPage(0).getMediaBox().getWidth() / 72 * 25.4)
          .isCloseTo(210, within(.01));
    }
  }

  @Test
  void the_rulers_of_the_test_page_are_true() throws Exception {
    Print print = new Print(new LabelPaper(SHEET, TRUE).test(), 600);
    // ticks hang from the cross at 20 mm, one each millimetre, over 170 mm
    Box ruler = print.blackOf(0, new Box(19.5, 20.5, 175, 1));
    assertThat(ruler.left()).isCloseTo(20, within(.2));
    assertThat(ruler.left() + ruler.width()).isCloseTo(190, within(.2));
  }

  @Test
  void two_labels_in_the_same_place_are_no_format() {
    assertThatThrownBy(() -> layout("210 297 3 8 6 9 64 34 60 35"))
        .isInstanceOf(Refused.class)
        .hasMessageContaining("The next label begins before this one ends");
    assertThatThrownBy(() -> layout("210 297 3 9 6 9 64 34 67 35"))
        .isInstanceOf(Refused.class)
        .hasMessage("The last label ends at 323 mm, beyond the paper.");
  }

  static List<Label> labels(int number) {
    return IntStream.range(0, number)
        .mapToObj(
            nth -> {
              String code = "G%03dX".formatted(nth);
              return new Label(
                  code,
                  code,
                  List.of(
                      "24-C18-%02d-%d".formatted(nth, nth % 4),
                      "C18-%02d".formatted(nth),
                      "run MIST-4 · batch M4-%02d".formatted(nth),
                      "stuck 14 Jun 2024",
                      "mist 1 · block 2, place " + nth));
            })
        .toList();
  }

  private static Box box(Layout layout, int place) {
    return new Box(
        layout.leftOf(place),
        layout.topOf(place),
        layout.width().doubleValue(),
        layout.height().doubleValue());
  }

  private static Box whole(Layout layout) {
    return new Box(0, 0, layout.paperWidth().doubleValue(), layout.paperHeight().doubleValue());
  }

  private static String text(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFTextStripper().getText(document);
    }
  }

  static Printer printer(String right, String down, String scale) {
    return new Printer("P", new BigDecimal(right), new BigDecimal(down), new BigDecimal(scale));
  }

  /** Paper width and height, across, down, left, top, width, height, steps right and down. */
  static Layout layout(String lengths) {
    String[] it = lengths.split(" ");
    return new Layout(
        new BigDecimal(it[0]),
        new BigDecimal(it[1]),
        Integer.parseInt(it[2]),
        Integer.parseInt(it[3]),
        new BigDecimal(it[4]),
        new BigDecimal(it[5]),
        new BigDecimal(it[6]),
        new BigDecimal(it[7]),
        new BigDecimal(it[8]),
        new BigDecimal(it[9]));
  }
}
