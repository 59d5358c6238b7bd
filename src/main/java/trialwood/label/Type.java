package trialwood.label;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;

/** The two weights that a document is set in. */
record Type(Letters plain, Letters bold) {

  /** From one baseline to the next, in sizes of the letters. */
  static final double LEADING = 1.2;

  Type(PDDocument document) throws IOException {
    this(new Letters(document, "DejaVuSans.ttf"), new Letters(document, "DejaVuSans-Bold.ttf"));
  }
}
