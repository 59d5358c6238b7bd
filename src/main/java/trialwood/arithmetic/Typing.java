package trialwood.arithmetic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import trialwood.analysis.bench.Length;
import trialwood.analysis.bench.Strength;
import trialwood.record.Refused;
import trialwood.web.Entry;

/**
 * What was typed into the boxes of a sum. What cannot be is noted beside its box and a stand-in
 * returned; {@link #orRefuse()} comes before anything is computed.
 */
class Typing {

  static final String UNIT = "Unit";
  static final String LENGTH_UNIT = "unit";

  private static final double WEAKEST = 10;
  private static final double STRONGEST = 30_000;
  private static final double ALL = 1_000_000;

  private final Map<String, String> typed;
  private final Entry entry = new Entry();
  private final List<String> remarks = new ArrayList<>();

  Typing(Map<String, String> typed) {
    this.typed = typed;
  }

  String text(String name) {
    return typed.getOrDefault(name, "").strip();
  }

  /** A number above 0. */
  double number(String name) {
    var number = entry.decimalIfAny(name, text(name));
    if (number == null) {
      if (text(name).isEmpty()) {
        entry.wrong(name, "Type a number.");
      }
      return 1;
    }
    if (number.signum() <= 0) {
      entry.wrong(name, "Type a number above 0.");
      return 1;
    }
    return number.doubleValue();
  }

  /** A whole number above 0. */
  int count(String name) {
    Integer count = entry.countIfAny(name, text(name));
    if (count == null) {
      entry.wrong(name, "Type a whole number.");
      return 1;
    }
    if (count == 0 && text(name).matches("[0\\s]+")) {
      entry.wrong(name, "Type a number above 0.");
    }
    return Math.max(1, count);
  }

  /** A rate typed in percent, as a fraction. */
  double percent(String name) {
    double percent = number(name);
    if (percent > 100) {
      entry.wrong(name, "A rate is at most 100 %.");
    }
    if (percent < 1) {
      entry.wrong(name, "Type a rate in percent: 85, not 0.85.");
    }
    return percent / 100;
  }

  /** A strength with the unit of its tile; what is unusual is remarked upon. */
  Strength strength(String name) {
    double number = number(name);
    boolean inPercent = text(name + UNIT).equals("percent");
    if (number > (inPercent ? 100 : ALL)) {
      entry.wrong(name, "A strength is at most 100 %.");
      return Strength.ofPpm(1);
    }
    Strength strength = inPercent ? Strength.ofPercent(number) : Strength.ofPpm(number);
    if (strength.ppm() > STRONGEST) {
      remarks.add("Stronger than 30,000 ppm (3 %) is unusual. Is the unit right?");
    }
    if (strength.ppm() < WEAKEST) {
      remarks.add("Weaker than 10 ppm is unusual. Is the unit right?");
    }
    return strength;
  }

  /** A length in metres, in the unit of the page's tile. */
  double metres(String name) {
    return unit().toMetres(number(name));
  }

  Length unit() {
    return Arrays.stream(Length.values())
        .filter(unit -> unit.sign().equals(text(LENGTH_UNIT)))
        .findFirst()
        .orElse(Length.CM);
  }

  void wrong(String name, String sentence) {
    entry.wrong(name, sentence);
  }

  List<String> remarks() {
    return List.copyOf(remarks);
  }

  /**
   * @throws Refused when anything cannot be computed with
   */
  void orRefuse() {
    entry.orRefuse();
  }
}
