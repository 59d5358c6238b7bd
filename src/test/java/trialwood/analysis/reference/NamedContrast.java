package trialwood.analysis.reference;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import trialwood.analysis.means.AdjustedMeans;
import trialwood.analysis.means.Contrast;

/**
 * The contrasts that the reference file knows by name.
 *
 * @param coefficients by level, in the order of the levels
 */
record NamedContrast(Map<String, Double> coefficients, AdjustedMeans means) {

  private static final List<String> DEGREES =
      List.of("linear", "quadratic", "cubic", "quartic", "degree 5", "degree 6");

  static NamedContrast of(Row row, AdjustedMeans means) {
    List<String> levels = means.names();
    int degree = DEGREES.indexOf(row.key()) + 1;
    var coefficients = new LinkedHashMap<String, Double>();
    double[] polynomial = degree > 0 ? Contrast.polynomial(levels.size(), degree) : new double[0];
    for (int i = 0; i < levels.size(); i++) {
      double coefficient =
          switch (row.key()) {
            case "first_half_vs_second" -> half(i, levels.size());
            default -> degree > 0 ? polynomial[i] : againstRest(row, levels.get(i), levels.size());
          };
      coefficients.put(levels.get(i), coefficient);
    }
    return new NamedContrast(coefficients, means);
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

  Object answer(Row row) {
    if (row.quantity().equals("coefficients")) {
      return text();
    }
    Contrast contrast = MeansFits.orNone(means.contrast(coefficients));
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
  private String text() {
    return coefficients.entrySet().stream()
        .map(part -> part.getKey() + ":" + digits(part.getValue()))
        .collect(Collectors.joining("|"));
  }

  private static String digits(double number) {
    return new BigDecimal(number).round(new MathContext(15)).stripTrailingZeros().toPlainString();
  }
}
