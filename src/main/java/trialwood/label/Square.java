package trialwood.label;

import io.nayuki.qrcodegen.QrCode;
import io.nayuki.qrcodegen.QrSegment;
import java.io.IOException;
import java.util.List;

/**
 * A QR code (ISO/IEC 18004) on a label: level Q, so that a quarter of it may be soiled, and a white
 * border of four modules.
 */
final class Square {

  /** Modules of the white border on each side. */
  private static final int QUIET = 4;

  /** Least side of the black part, mm. */
  static final double LEAST = 15;

  private final QrCode code;

  Square(String payload) {
    List<QrSegment> segments = QrSegment.makeSegments(payload);
    this.code = QrCode.encodeSegments(segments, QrCode.Ecc.QUARTILE, 1, 10, -1, false);
  }

  /** Side of the whole, with its border, when a module is so wide. */
  double side(double module) {
    return (code.size + 2 * QUIET) * module;
  }

  /**
   * Width of a module, mm, so that the whole fits into a box; never so small that the black part
   * has less than {@link #LEAST}.
   */
  double module(double box) {
    return Math.max(box / (code.size + 2 * QUIET), LEAST / code.size);
  }

  /** Draws it, its white border included, with the upper left corner there. */
  void draw(Ink ink, double left, double top, double module) throws IOException {
    for (int row = 0; row < code.size; row++) {
      double at = top + (QUIET + row) * module;
      int from = 0;
      while (from < code.size) {
        int until = from;
        while (until < code.size && code.getModule(until, row)) {
          until++;
        }
        if (until > from) {
          ink.bar(left + (QUIET + from) * module, at, (until - from) * module, module);
        }
        from = until + 1;
      }
    }
    ink.fill();
  }
}
