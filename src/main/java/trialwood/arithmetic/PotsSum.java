package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Length;
import trialwood.analysis.bench.PotSpacing;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How many pots stand on an area. */
@Component
@Order(90)
class PotsSum implements Sum {

  private static final double HUNDRED_SQUARE_FEET = 9.290304;

  private final Measures measures;

  PotsSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "pots";
  }

  @Override
  public String title() {
    return "Pots on a bed";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("distance", "Distance, centre to centre", null),
        Box.lengthUnit("Distance in", Length.CM),
        Box.number("area", "Area, square metres", "100 square feet are 9.29").usually("1"));
  }

  @Override
  public Result work(Typing typed) {
    PotSpacing spacing = new PotSpacing(typed.metres("distance"));
    double area = typed.number("area");
    typed.orRefuse();
    return Result.of(
        typed,
        new Line("In a square", measures.number(spacing.square(area), 1)),
        new Line("Staggered", measures.number(spacing.staggered(area), 1)),
        new Line(
            "On 100 square feet, square", measures.number(spacing.square(HUNDRED_SQUARE_FEET), 1)),
        new Line(
            "On 100 square feet, staggered",
            measures.number(spacing.staggered(HUNDRED_SQUARE_FEET), 1)));
  }

  @Override
  public String method() {
    return "Area ÷ distance²; staggered, that ÷ 0.866. Paths and edges are not counted.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
