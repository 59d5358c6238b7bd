package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Trays;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How many trays a number of cuttings fills. */
@Component
@Order(60)
class TraysSum implements Sum {

  private final Measures measures;

  TraysSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "trays";
  }

  @Override
  public String title() {
    return "Trays needed";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("cuttings", "Cuttings", null), Box.number("cells", "Cells in a tray", null));
  }

  @Override
  public Result work(Typing typed) {
    int cuttings = typed.count("cuttings");
    int cells = typed.count("cells");
    typed.orRefuse();
    Trays trays = Trays.of(cuttings, cells);
    return Result.of(
        typed,
        new Line("Trays", measures.count(trays.trays())),
        new Line("In the last tray", measures.share(trays.inLast(), cells)));
  }

  @Override
  public String method() {
    return "Cuttings ÷ cells, rounded up.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
