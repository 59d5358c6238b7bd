package trialwood.walk;

import java.io.IOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/**
 * A PDF as a person reads it.
 *
 * @param text its words, with one blank wherever the lines break
 */
record Paper(String text, int pages) {

  /**
   * @throws IOException when it does not open
   */
  static Paper of(byte[] pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      return new Paper(text.replaceAll("[\\s\\u00a0\\u202f]+", " "), document.getNumberOfPages());
    }
  }
}
