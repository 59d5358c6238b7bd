package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.PlantingDensity;
import trialwood.analysis.bench.Length;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How many plants stand on an acre and on a hectare. */
@Component
@Order(100)
class PlantsSum implements Sum {

  private final Measures measures;

  PlantsSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "plants";
  }

  @Override
  public String title() {
    return "Plants on a field";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("inRow", "Distance in the row", null),
        Box.number("between", "Distance between rows", null),
        Box.lengthUnit("Both in", Length.M));
  }

  @Override
  public Result work(Typing typed) {
    PlantingDensity density =
        PlantingDensity.metres(typed.metres("inRow"), typed.metres("between"));
    typed.orRefuse();
    return Result.of(
        typed,
        new Line("On a hectare", measures.count(density.perHectare())),
        new Line("On an acre", measures.count(density.perAcre())),
        new Line("Room of one plant", measures.quantity(10_000 / density.perHectare(), 2, "m²")));
  }

  @Override
  public String method() {
    return "10,000 m² ÷ (a × b) on a hectare; 43,560 ft² ÷ (a × b) on an acre. Headlands and roads are not counted.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
