package trialwood.arithmetic;

import java.util.List;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Medium;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** What one cell of a tray holds. */
@Component
@Order(80)
class CellSum implements Sum {

  private final Measures measures;

  CellSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "cell";
  }

  @Override
  public String title() {
    return "Volume of a cell";
  }

  @Override
  public List<Box> boxes() {
    return List.of(
        Box.number("litres", "What the whole tray takes, litres", null),
        Box.number("cells", "Cells in the tray", null));
  }

  @Override
  public Result work(Typing typed) {
    double litres = typed.number("litres");
    int cells = typed.count("cells");
    typed.orRefuse();
    return Result.of(
        typed, new Line("One cell", measures.quantity(Medium.cellMl(litres, cells), 1, "mL")));
  }

  @Override
  public String method() {
    return "Litres of the tray ÷ cells.";
  }

  @Override
  public String source() {
    return "By calculation.";
  }
}
