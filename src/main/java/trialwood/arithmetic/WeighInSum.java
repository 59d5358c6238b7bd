package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Strength;
import trialwood.analysis.bench.WeighIn;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** Weighs a dry product into water. */
@Component
@Order(20)
class WeighInSum implements Sum {

  private final Measures measures;

  WeighInSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "weigh-in";
  }

  @Override
  public String title() {
    return "Weigh in a hormone";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("wanted", "Strength wanted", null),
        Box.strengthUnit("wanted", "Wanted"),
        Box.number("litres", "How much, in litres", "0.5 for half a litre").usually("1"),
        Box.number("purity", "Active substance in the product, %", "100 for a pure one; see label")
            .usually("100"));
  }

  @Override
  public Result work(Typing typed) {
    Strength wanted = typed.strength("wanted");
    double litres = typed.number("litres");
    double purity = typed.percent("purity");
    typed.orRefuse();
    WeighIn weighIn = WeighIn.of(wanted, litres, purity);
    return Result.of(
        typed,
        new Line("Product", measures.quantity(weighIn.productGrams(), 3, "g")),
        new Line("Active substance in it", measures.quantity(weighIn.pureGrams(), 3, "g")),
        new Line("Make up to", measures.quantity(litres * 1000, 1, "mL")),
        new Line("Strength", Strengths.words(wanted, measures)));
  }

  @Override
  public String method() {
    return "Grams of active substance = ppm × litres ÷ 1,000; product = that ÷ its purity.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }

  @Override
  public boolean isOfHormones() {
    return true;
  }
}
