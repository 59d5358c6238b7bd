package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A model as the reference files write it, in the notation of R: {@code y ~ block + N*P + (1 |
 * entry:site) (a remark)}. {@code a:b} is the combination of a and b, {@code a*b} stands for {@code
 * a + b + a:b}, {@code (1 | a:b)} is a random intercept; any other bracket is a remark.
 *
 * @param response name of the column on the left
 * @param fixed the factors of each fixed term, the shorter terms first as in R; without the 1
 * @param random the factors of each random term, as written
 */
record Formula(String response, List<List<String>> fixed, List<List<String>> random) {

  private static final Pattern RANDOM = Pattern.compile("\\(\\s*1\\s*\\|([^)]*)\\)");
  private static final Pattern REMARK = Pattern.compile("\\([^)]*\\)");

  static Formula of(String text) {
    String[] sides = text.split("~", 2);
    var random = new ArrayList<List<String>>();
    Matcher brackets = RANDOM.matcher(sides[1]);
    while (brackets.find()) {
      random.add(factors(brackets.group(1)));
    }
    String plain = REMARK.matcher(brackets.replaceAll("")).replaceAll("");
    Set<List<String>> fixed = new LinkedHashSet<>();
    for (String part : plain.split("\\+")) {
      fixed.addAll(expanded(part));
    }
    return new Formula(
        sides[0].strip(),
        fixed.stream().sorted(Comparator.comparingInt(List::size)).toList(),
        List.copyOf(random));
  }

  /** The fixed terms as text, {@code a:b}. */
  List<String> terms() {
    return fixed.stream().map(term -> String.join(":", term)).toList();
  }

  /** Every factor named in a fixed term, once, in the order of the terms. */
  List<String> fixedFactors() {
    return fixed.stream().flatMap(List::stream).distinct().toList();
  }

  /** {@code a*b*c} as all its combinations; the empty part and the 1 as none. */
  private static List<List<String>> expanded(String part) {
    var terms = new ArrayList<List<String>>();
    for (String factor : part.split("\\*")) {
      if (factor.isBlank() || factor.strip().equals("1")) {
        continue;
      }
      for (List<String> term : List.copyOf(terms)) {
        var longer = new ArrayList<>(term);
        longer.addAll(factors(factor));
        terms.add(List.copyOf(longer));
      }
      terms.add(factors(factor));
    }
    return terms;
  }

  private static List<String> factors(String term) {
    return Arrays.stream(term.split(":")).map(String::strip).toList();
  }
}
