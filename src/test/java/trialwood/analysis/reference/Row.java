package trialwood.analysis.reference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * One expected value with its own tolerance.
 *
 * @param given the inputs as written: {@code name=value} pairs, semicolons between them
 * @param key which of several values is meant; empty where there is one
 * @param value a number, NA, Inf, -Inf or, seldom, text
 */
public record Row(
    ReferenceFolder folder,
    String file,
    String example,
    String method,
    String given,
    String quantity,
    String key,
    String value,
    double absolute,
    double relative) {

  /** An input by its name. */
  public String input(String name) {
    return Objects.requireNonNull(inputs().get(name), () -> name + " in " + given);
  }

  public boolean has(String name) {
    return inputs().containsKey(name);
  }

  int whole(String name) {
    return Integer.parseInt(input(name));
  }

  public double number(String name) {
    return number0(input(name));
  }

  /** A list written with bars between its numbers. */
  double[] numbers(String name) {
    return Arrays.stream(input(name).split("\\|")).mapToDouble(Row::number0).toArray();
  }

  /** The number in a key such as {@code t=0.8}. */
  double keyNumber() {
    return Double.parseDouble(key.substring(key.indexOf('=') + 1));
  }

  /** The raw data an input names. */
  public DataFile data(String input) {
    return folder.data(input(input));
  }

  public DataFile data() {
    return data("data");
  }

  /** The row whose model this one goes on with: the first of the same case that names one. */
  Row modelRow() {
    return folder.rows().stream()
        .filter(row -> row.file.equals(file) && row.example.equals(example))
        .filter(row -> row.method.equals("reml"))
        .findFirst()
        .orElseThrow(() -> new UnknownRow(this));
  }

  /** Whether {@code got} is the value within the row's tolerance. */
  public boolean meets(Object got) {
    if (!(got instanceof Number number)) {
      return value.equals(got);
    }
    double found = number.doubleValue();
    return switch (value) {
      case "NA" -> Double.isNaN(found);
      case "Inf" -> found == Double.POSITIVE_INFINITY;
      case "-Inf" -> found == Double.NEGATIVE_INFINITY;
      default -> {
        double wanted = Double.parseDouble(value);
        yield Math.abs(found - wanted) <= absolute + relative * Math.abs(wanted);
      }
    };
  }

  /** The name=value pairs; a semicolon inside brackets belongs to a remark. */
  private Map<String, String> inputs() {
    var pairs = new HashMap<String, String>();
    for (String pair : given.split(";(?![^(]*\\))")) {
      if (!pair.isBlank()) {
        String[] parts = pair.split("=", 2);
        pairs.put(parts[0].strip(), parts[1]);
      }
    }
    return pairs;
  }

  /** A number, with a remark in brackets behind it left away. */
  private static double number0(String text) {
    String number = text.strip().split(" ", 2)[0];
    return switch (number) {
      case "Inf" -> Double.POSITIVE_INFINITY;
      case "-Inf" -> Double.NEGATIVE_INFINITY;
      default -> Double.parseDouble(number);
    };
  }

  @Override
  public String toString() {
    return "%s %s %s(%s) %s %s = %s".formatted(file, example, method, given, quantity, key, value);
  }
}
