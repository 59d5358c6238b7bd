package trialwood.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.client.j2se.BufferedImageLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/** A printed PDF as it lies on the table: pictures of its pages, measured in millimetres. */
final class Print {

  private final List<BufferedImage> pages = new ArrayList<>();
  private final double dotsPerMm;

  Print(byte[] pdf, int dpi) throws IOException {
    this.dotsPerMm = dpi / 25.4;
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      for (int page = 0; page < document.getNumberOfPages(); page++) {
        pages.add(renderer.renderImageWithDPI(page, dpi, ImageType.GRAY));
      }
    }
  }

  int pages() {
    return pages.size();
  }

  /** A rectangle on a page, in millimetres. */
  record Box(double left, double top, double width, double height) {}

  /** What a reader that knows nothing of how it was drawn finds in a part of a page. */
  String decoded(int page, Box box) throws ReaderException {
    Result result =
        new QRCodeReader()
            .decode(
                new BinaryBitmap(
                    new HybridBinarizer(new BufferedImageLuminanceSource(part(page, box)))),
                Map.of(
                    DecodeHintType.TRY_HARDER,
                    true,
                    DecodeHintType.POSSIBLE_FORMATS,
                    List.of(BarcodeFormat.QR_CODE)));
    return result.getText();
  }

  boolean isEmpty(int page, Box box) {
    try {
      blackOf(page, box);
      return false;
    } catch (NotFoundException white) {
      return true;
    }
  }

  /** The smallest rectangle around all that is black in a part of a page. */
  Box blackOf(int page, Box box) throws NotFoundException {
    BufferedImage part = part(page, box);
    int left = Integer.MAX_VALUE;
    int top = Integer.MAX_VALUE;
    int right = -1;
    int bottom = -1;
    for (int y = 0; y < part.getHeight(); y++) {
      for (int x = 0; x < part.getWidth(); x++) {
        if (part.getRaster().getSample(x, y, 0) < 128) {
          left = Math.min(left, x);
          top = Math.min(top, y);
          right = Math.max(right, x);
          bottom = Math.max(bottom, y);
        }
      }
    }
    if (right < 0) {
      throw NotFoundException.getNotFoundInstance();
    }
    return new Box(
        dots(box.left()) / dotsPerMm + left / dotsPerMm,
        dots(box.top()) / dotsPerMm + top / dotsPerMm,
        (right - left + 1) / dotsPerMm,
        (bottom - top + 1) / dotsPerMm);
  }

  private BufferedImage part(int page, Box box) {
    BufferedImage whole = pages.get(page);
    int left = dots(box.left());
    int top = dots(box.top());
    return whole.getSubimage(
        left,
        top,
        Math.min(dots(box.width()), whole.getWidth() - left),
        Math.min(dots(box.height()), whole.getHeight() - top));
  }

  private int dots(double mm) {
    return (int) Math.round(mm * dotsPerMm);
  }
}
