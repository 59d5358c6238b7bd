package trialwood.analysis.growth;

import java.util.List;
import trialwood.analysis.Refuse;

/**
 * Disease graded by eye in twelve grades, 0 for none to 11 for all, narrow near both ends because
 * the eye sees healthy tissue as readily as diseased. A grade is a class, not a quantity: grades
 * are never averaged, their midpoints are. Class ends belong to the lower grade.
 *
 * <p>Source: Horsfall, J. G. and Barratt, R. W. (1945) An improved grading system for measuring
 * plant diseases (abstract). Phytopathology 35, 655
 *
 * @param grade 0 to 11
 */
public record HorsfallBarratt(int grade) {

  /** Upper ends of the grades, in per cent of the tissue. */
  private static final List<Integer> UPPER = List.of(0, 3, 6, 12, 25, 50, 75, 87, 94, 97, 100, 100);

  public HorsfallBarratt {
    Refuse.unless(grade >= 0 && grade <= 11, "A grade runs from 0 to 11, not %d.", grade);
  }

  /** The grade in which a severity falls: the first that reaches it; all of it is grade 11. */
  public static HorsfallBarratt of(double percent) {
    Refuse.unless(
        percent >= 0 && percent <= 100, "A severity lies between 0 and 100 per cent: %s.", percent);
    int grade = 0;
    while (UPPER.get(grade) < percent) {
      grade++;
    }
    return new HorsfallBarratt(percent == 100 ? 11 : grade);
  }

  /** Lower end of the class in per cent. */
  public int low() {
    return grade == 0 ? 0 : UPPER.get(grade - 1);
  }

  /** Upper end of the class in per cent. */
  public int high() {
    return UPPER.get(grade);
  }

  /** The severity that stands for the grade, in per cent. */
  public double midpoint() {
    return (low() + high()) / 2.0;
  }
}
