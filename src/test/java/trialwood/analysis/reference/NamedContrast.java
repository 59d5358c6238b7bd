package trialwood.analysis.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trialwood.analysis.means.Contrast;

/**
 * A contrast of a row: the coefficients that its name stands for, as text, and what comes of the
 * coefficients that the file gives for that name.
 *
 * @param coefficients by level, in the order of the levels
 */
record NamedContrast(Map<String, Double> coefficients) {

  private static final List<String> DEGREES = List.of("linear", "quadratic", "cubic", "quartic");

  /** What the name of a contrast stands for. */
  static NamedContrast named(Row row, List<String> levels) {
    int degree = DEGREES.indexOf(row.key()) + 1;
    double[] polynomial = degree > 0 ? Contrast.polynomial(levels.size(), degree) : new double[0];
    var coefficients = new LinkedHashMap<String, Double>();
    for (int i = 0; i < levels.size(); i++) {
      double coefficient =
          degree > 0
              ? polynomial[i]
              : row.key().equals("first_half_vs_second")
                  ? half(i, levels.size())
                  : againstRest(row, levels.get(i), levels.size());
      coefficients.put(levels.get(i), coefficient);
    }
    return new NamedContrast(coefficients);
  }

  /** Reads {@code level:coefficient|level:coefficient}. */
  static NamedContrast read(String text) {
    var coefficients = new LinkedHashMap<String, Double>();
    for (String part : text.split("\\|")) {
      int colon = part.lastIndexOf(':');
      coefficients.put(part.substring(0, colon), Double.valueOf(part.substring(colon + 1)));
    }
    return new NamedContrast(coefficients);
  }

  private static double half(int place, int levels) {
    int first = levels / 2;
    return place < first ? 1.0 / first : -1.0 / (levels - first);
  }

  private static double againstRest(Row row, String level, int levels) {
    if (!row.key().endsWith("_vs_rest")) {
      throw new UnknownRow(row);
    }
    return row.key().equals(level + "_vs_rest") ? 1 : -1.0 / (levels - 1);
  }

  static Object of(Row row, Contrast contrast) {
    return switch (row.quantity()) {
      case "estimate" -> contrast.estimate().estimate();
      case "se" -> contrast.estimate().standardError();
      case "df" -> contrast.estimate().degreesOfFreedom();
      case "t" -> contrast.t();
      case "p" -> contrast.p();
      case "ss" -> contrast.ss();
      default -> throw new UnknownRow(row);
    };
  }

  /** {@code level:coefficient}, with 15 digits. */
  String text() {
    return coefficients.entrySet().stream()
        .map(part -> part.getKey() + ":" + digits(part.getValue()))
        .collect(Collectors.joining("|"));
  }

  private static String digits(double number) {
    return new BigDecimal(number).round(new MathContext(15)).stripTrailingZeros().toPlainString();
  }
}
