package trialwood.label;

import java.math.BigDecimal;
import trialwood.record.Check;

/**
 * How labels lie on their paper: all lengths in millimetres, from the paper's left and upper edge.
 * A single label on a roll is a paper of its own size.
 *
 * @param across labels side by side
 * @param down labels one below the other
 * @param left from the paper's edge to the first label
 * @param stepRight from one label's left edge to the next one's
 */
public record Layout(
    BigDecimal paperWidth,
    BigDecimal paperHeight,
    int across,
    int down,
    BigDecimal left,
    BigDecimal top,
    BigDecimal width,
    BigDecimal height,
    BigDecimal stepRight,
    BigDecimal stepDown) {

  private static final BigDecimal LONGEST = BigDecimal.valueOf(1000);

  /**
   * @throws trialwood.record.Refused when the labels overlap, leave the paper, or are too small for
   *     a square that can be read in wet light
   */
  public Layout {
    Check.that()
        .holds(paperWidth.compareTo(LONGEST) <= 0, "paperWidth", "A paper is at most 1000 mm wide.")
        .holds(
            paperHeight.compareTo(LONGEST) <= 0, "paperHeight", "A paper is at most 1000 mm high.")
        .holds(across >= 1 && across <= 20, "across", "There are 1 to 20 labels side by side.")
        .holds(down >= 1 && down <= 50, "down", "There are 1 to 50 labels below each other.")
        .holds(left.signum() >= 0, "left", "A margin is 0 mm or more.")
        .holds(top.signum() >= 0, "top", "A margin is 0 mm or more.")
        .holds(
            width.compareTo(BigDecimal.valueOf(45)) >= 0,
            "width",
            "A label is at least 45 mm wide: the square and its white border take 21 mm.")
        .holds(
            height.compareTo(BigDecimal.valueOf(21)) >= 0,
            "height",
            "A label is at least 21 mm high: the square and its white border take 21 mm.")
        .holds(
            stepRight.compareTo(width) >= 0,
            "stepRight",
            "The next label begins before this one ends: the step is less than the width.")
        .holds(
            stepDown.compareTo(height) >= 0,
            "stepDown",
            "The next label begins before this one ends: the step is less than the height.")
        .orRefuse();
    BigDecimal right = end(left, across, stepRight, width);
    BigDecimal bottom = end(top, down, stepDown, height);
    Check.that()
        .holds(
            right.compareTo(paperWidth) <= 0,
            "paperWidth",
            "The last label ends at %s mm, beyond the paper.".formatted(right.toPlainString()))
        .holds(
            bottom.compareTo(paperHeight) <= 0,
            "paperHeight",
            "The last label ends at %s mm, beyond the paper.".formatted(bottom.toPlainString()))
        .orRefuse();
  }

  private static BigDecimal end(BigDecimal from, int number, BigDecimal step, BigDecimal size) {
    return from.add(step.multiply(BigDecimal.valueOf(number - 1L))).add(size);
  }

  /** Labels on one paper. */
  public int places() {
    return across * down;
  }

  /** Left edge of a place, mm; places are counted along the rows, from 0. */
  double leftOf(int place) {
    return left.doubleValue() + place % across * stepRight.doubleValue();
  }

  /** Upper edge of a place, mm. */
  double topOf(int place) {
    return top.doubleValue() + place / across * stepDown.doubleValue();
  }
}
