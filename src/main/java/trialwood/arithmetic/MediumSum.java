package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Medium;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How much medium a number of pots takes. */
@Component
@Order(70)
class MediumSum implements Sum {

  private final Measures measures;

  MediumSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "medium";
  }

  @Override
  public String title() {
    return "Medium for pots";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("pots", "Pots", null),
        Box.number(
            "litres",
            "True volume of one, litres",
            "Measured, not the name of its class: a #1 holds 2.7 to 2.9 litres."));
  }

  @Override
  public Result work(Typing typed) {
    int pots = typed.count("pots");
    double each = typed.number("litres");
    typed.orRefuse();
    double litres = Medium.litres(pots, each);
    return Result.of(
        typed,
        new Line("Medium", measures.quantity(litres, 0, "L")),
        new Line("In cubic metres", measures.quantity(litres / 1000, 2, "m³")));
  }

  @Override
  public String method() {
    return "Pots × true volume. Medium settles: what is filled loosely takes more.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
