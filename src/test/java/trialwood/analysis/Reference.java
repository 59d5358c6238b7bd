package trialwood.analysis;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the reference files; the source of each stands in its first lines. */
public final class Reference {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private Reference() {}

  /** One expected value with its own tolerance. */
  public record Row(
      String example,
      String method,
      Map<String, String> inputs,
      String quantity,
      String key,
      double value,
      double absolute,
      double relative) {

    public int whole(String input) {
      return Integer.parseInt(text(input));
    }

    public double number(String input) {
      return Double.parseDouble(text(input));
    }

    public double[] numbers(String input) {
      return Arrays.stream(text(input).split("\\|")).mapToDouble(Double::parseDouble).toArray();
    }

    public String text(String input) {
      return Objects.requireNonNull(inputs.get(input), input);
    }

    /** The number in a key such as {@code t=0.8}. */
    public double keyNumber() {
      return Double.parseDouble(key.substring(key.indexOf('=') + 1));
    }

    public void matches(double got) {
      assertThat(got).isCloseTo(value, within(absolute + relative * Math.abs(value)));
    }

    @Override
    public String toString() {
      return String.join(" ", example, method, inputs.toString(), quantity, key);
    }
  }

  /** Rows of a numbered file by one method; every value is a finite number. */
  public static Stream<Row> rows(String file, String method) {
    return records(file).stream()
        .filter(line -> line.get("method").equals(method))
        .map(
            line ->
                new Row(
                    line.get("case"),
                    method,
                    inputs(line.get("inputs")),
                    line.get("quantity"),
                    line.get("key"),
                    Double.parseDouble(line.get("value")),
                    Double.parseDouble(line.get("tol_abs")),
                    Double.parseDouble(line.get("tol_rel"))));
  }

  /** Lines of any of the files, by column name. */
  public static List<CSVRecord> records(String file) {
    var stream =
        Objects.requireNonNull(Reference.class.getResourceAsStream("/reference/" + file), file);
    try (var reader = new InputStreamReader(stream, StandardCharsets.UTF_8)) {
      return FORMAT.parse(reader).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> inputs(String text) {
    return Arrays.stream(text.split(";"))
        .map(pair -> pair.split("=", 2))
        .collect(Collectors.toMap(pair -> pair[0], pair -> pair[1]));
  }
}
