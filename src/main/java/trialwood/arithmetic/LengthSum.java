package trialwood.arithmetic;

import java.util.Arrays;
import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Length;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** A length in the other units. */
@Component
@Order(110)
class LengthSum implements Sum {

  private final Measures measures;

  LengthSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "length";
  }

  @Override
  public String title() {
    return "Lengths";
  }

  @Override
  public List<Box> boxes() {
    return List.of(Box.number("length", "Length", null), Box.lengthUnit("It is in", Length.INCH));
  }

  @Override
  public Result work(Typing typed) {
    double metres = typed.metres("length");
    Length given = typed.unit();
    typed.orRefuse();
    return new Result(
        Arrays.stream(Length.values())
            .filter(unit -> unit != given)
            .map(
                unit ->
                    new Line(
                        unit.sign(),
                        measures.number(unit.fromMetres(metres), unit == Length.CM ? 1 : 3)))
            .toList(),
        typed.remarks());
  }

  @Override
  public String method() {
    return "1 in = 2.54 cm, 1 ft = 12 in = 0.3048 m.";
  }

  @Override
  public String source() {
    return "By definition of the inch, 1959.";
  }
}
