package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Dilution;
import trialwood.analysis.bench.Strength;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** Thins a stock solution. */
@Component
@Order(10)
class DilutionSum implements Sum {

  private final Measures measures;

  DilutionSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "dilution";
  }

  @Override
  public String title() {
    return "Thin a hormone stock";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("stock", "Strength of the stock", null),
        Box.strengthUnit("stock", "Stock"),
        Box.number("wanted", "Strength wanted", null),
        Box.strengthUnit("wanted", "Wanted"),
        Box.number("litres", "How much, in litres", "0.5 for half a litre").usually("1"));
  }

  @Override
  public Result work(Typing typed) {
    double litres = typed.number("litres");
    Strength stock = typed.strength("stock");
    Strength wanted = typed.strength("wanted");
    typed.orRefuse();
    if (wanted.ppm() > stock.ppm()) {
      typed.wrong("wanted", "Water only thins: this is stronger than the stock.");
    }
    typed.orRefuse();
    Dilution dilution = Dilution.of(stock, wanted, litres);
    return Result.of(
        typed,
        new Line("Stock", measures.quantity(dilution.stockMl(), 1, "mL")),
        new Line("Water", measures.quantity(dilution.waterMl(), 1, "mL")),
        new Line("Made", measures.quantity(litres * 1000, 1, "mL")),
        new Line("Strength", Strengths.words(wanted, measures)));
  }

  @Override
  public String method() {
    return "C₁ × V₁ = C₂ × V₂, so stock = volume × strength wanted ÷ strength of the stock;"
        + " 1 % = 10,000 ppm, 1 ppm = 1 mg/L.";
  }

  @Override
  public String source() {
    return "By calculation; the units are common practice for dilute water solutions.";
  }

  @Override
  public boolean isOfHormones() {
    return true;
  }
}
