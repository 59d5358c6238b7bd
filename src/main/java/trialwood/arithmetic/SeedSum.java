package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Start;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How much seed to sow for a number of plants in the field. */
@Component
@Order(50)
class SeedSum implements Sum {

  private final Measures measures;

  SeedSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "seed";
  }

  @Override
  public String title() {
    return "Seed to sow";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("target", "Plants wanted", null),
        Box.number("emerged", "Emerged, of sown, %", null),
        Box.number("pricked", "Alive after pricking out, %", null),
        Box.number("established", "Established in the field, %", null));
  }

  @Override
  public Result work(Typing typed) {
    int target = typed.count("target");
    List<Double> rates =
        List.of(typed.percent("emerged"), typed.percent("pricked"), typed.percent("established"));
    typed.orRefuse();
    Start start = Start.with(target, rates, 0);
    return Result.of(
        typed,
        new Line("Sow", measures.counted(start.needed(), "seed", "seeds")),
        new Line("Left of each seed", measures.percent(target / start.exact())));
  }

  @Override
  public String method() {
    return "Plants wanted ÷ (emerged × pricked out × established), rounded up.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
