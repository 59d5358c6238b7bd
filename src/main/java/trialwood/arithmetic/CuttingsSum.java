package trialwood.arithmetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Start;
import trialwood.arithmetic.CandidateRates.Rate;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** How many cuttings to stick; the rates may come from the records of a candidate. */
@Component
@Order(40)
class CuttingsSum implements Sum {

  private static final Map<String, String> STEPS = CandidateRates.STEPS;

  private final CandidateRates records;
  private final Measures measures;

  CuttingsSum(CandidateRates records, Measures measures) {
    this.records = records;
    this.measures = measures;
  }

  @Override
  public String key() {
    return "cuttings";
  }

  @Override
  public String title() {
    return "Cuttings to stick";
  }

  @Override
  public List<Box> boxes() {
    List<Box> boxes = new ArrayList<>();
    boxes.add(Box.number("target", "Plants wanted at the end", null));
    boxes.add(
        Box.number(
            "candidate",
            "Candidate",
            "Its own records fill the rates that you leave empty. May be left out."));
    STEPS.forEach((name, label) -> boxes.add(Box.number(name, label + ", %", null)));
    boxes.add(
        Box.number("margin", "Margin, %", "Half of the time the rates fall short.").usually("10"));
    return boxes;
  }

  @Override
  public Result work(Typing typed) {
    int target = typed.count("target");
    double margin = typed.text("margin").equals("0") ? 0 : typed.percent("margin");
    Map<String, Rate> known = known(typed);
    List<Double> rates = new ArrayList<>();
    List<Line> used = new ArrayList<>();
    STEPS.forEach(
        (name, label) -> {
          Rate rate = known.get(name);
          if (rate != null && typed.text(name).isEmpty()) {
            rates.add(rate.rate());
            used.add(new Line(label, measures.percent(rate.rate()) + " · " + rate.counted()));
          } else {
            double fraction = typed.percent(name);
            rates.add(fraction);
            used.add(new Line(label, measures.percent(fraction) + " · as typed"));
          }
        });
    if (rates.stream().anyMatch(rate -> rate <= 0)) {
      typed.wrong("candidate", "By its records none is left after one of the steps.");
    }
    typed.orRefuse();
    Start start = Start.with(target, rates, margin);
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("Stick", measures.counted(start.withMargin(), "cutting", "cuttings")));
    lines.add(new Line("Without the margin", measures.count(start.needed())));
    lines.addAll(used);
    return new Result(lines, typed.remarks());
  }

  private Map<String, Rate> known(Typing typed) {
    String code = typed.text("candidate");
    if (code.isEmpty()) {
      return Map.of();
    }
    return records
        .of(code)
        .orElseGet(
            () -> {
              typed.wrong("candidate", "No accession has the code “%s”.".formatted(code));
              return Map.of();
            });
  }

  @Override
  public String method() {
    return "Plants wanted ÷ (rooted × weaned × potted × wintered), rounded up; the margin is put on"
        + " before rounding.";
  }

  @Override
  public String source() {
    return "By calculation; a margin of 10 % is common practice.";
  }
}
