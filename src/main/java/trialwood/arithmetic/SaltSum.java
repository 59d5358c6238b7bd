package trialwood.arithmetic;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import trialwood.analysis.bench.Strength;
import trialwood.arithmetic.Result.Line;
import trialwood.web.Measures;

/** Says the strength of a potassium salt as that of its acid, and back. */
@Component
@Order(30)
class SaltSum implements Sum {

  private static final String ACID = "iba";

  private final Measures measures;

  SaltSum(Measures measures) {
    this.measures = measures;
  }

  @Override
  public String key() {
    return "salt";
  }

  @Override
  public String title() {
    return "K-IBA and IBA";
  }

  @Override
  public List<Box> boxes() {
    Map<String, String> forms = new LinkedHashMap<>();
    forms.put("kiba", "K-IBA, the salt");
    forms.put(ACID, "IBA, the acid");
    return List.of(
        Box.number("strength", "Strength", null),
        Box.strengthUnit("strength", "Strength"),
        new Box("form", "It is given as", null, forms, "kiba"));
  }

  @Override
  public Result work(Typing typed) {
    Strength given = typed.strength("strength");
    typed.orRefuse();
    boolean acid = typed.text("form").equals(ACID);
    if (acid && given.ppm() > Strength.ofPercent(100).saltAsAcid().ppm()) {
      typed.wrong("strength", "Even the pure salt holds only 84.2 % of the acid.");
    }
    typed.orRefuse();
    Strength other = acid ? given.acidAsSalt() : given.saltAsAcid();
    return Result.of(
        typed,
        new Line(acid ? "As K-IBA" : "As IBA", Strengths.words(other, measures)),
        new Line(acid ? "Given as IBA" : "Given as K-IBA", Strengths.words(given, measures)));
  }

  @Override
  public String method() {
    return "IBA = K-IBA × 203.24 ÷ 241.33, the ratio of their molar masses. Always write down which"
        + " of the two a strength means.";
  }

  @Override
  public String source() {
    return "Molar masses in g/mol, from memory.";
  }

  @Override
  public boolean isOfHormones() {
    return true;
  }
}
