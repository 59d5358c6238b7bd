package trialwood.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trialwood.analysis.mixed.Factor;
import trialwood.analysis.mixed.MixedFit;
import trialwood.analysis.mixed.MixedModel;

/**
 * Variance components by REML from raw plots: 200 entries × 8 sites × 3 years × 3 replicates and 50
 * × 4 × 2 × 3, a tenth of the plots missing. Every call gets values it has not seen, and sorts the
 * labels of the plots anew.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 3)
@Measurement(iterations = 5, time = 3)
@Fork(1)
public class SiteTrials {

  @Param({"small", "large"})
  private String size = "";

  private Map<String, List<String>> labels = Map.of();
  private double[] seen = {};
  private double[] values = {};
  private final SplittableRandom numbers = new SplittableRandom(1);

  @Setup
  public void read() {
    var format =
        CSVFormat.DEFAULT
            .builder()
            .setCommentMarker('#')
            .setHeader()
            .setSkipHeaderRecord(true)
            .get();
    var file = Path.of("src/test/resources/reference/data-bench-%s-a.csv".formatted(size));
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
      List<CSVRecord> plots =
          parser.getRecords().stream().filter(record -> !record.get("y").isEmpty()).toList();
      seen = plots.stream().mapToDouble(plot -> Double.parseDouble(plot.get("y"))).toArray();
      labels =
          Stream.of("site", "year", "rep", "entry")
              .collect(
                  Collectors.toMap(
                      column -> column,
                      column -> plots.stream().map(plot -> plot.get(column)).toList()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Setup(Level.Invocation)
  public void fresh() {
    values = seen.clone();
    for (int i = 0; i < values.length; i++) {
      values[i] += 0.3 * numbers.nextGaussian();
    }
  }

  /** env fixed; env:rep, entry, entry:site, entry:year, entry:env random. */
  @Benchmark
  public MixedFit full() {
    Factor site = factor("site");
    Factor year = factor("year");
    Factor entry = factor("entry");
    Factor env = Factor.crossed(site, year);
    return MixedModel.of(values)
        .fixed(env)
        .random(Factor.crossed(env, factor("rep")))
        .random(entry)
        .random(Factor.crossed(entry, site))
        .random(Factor.crossed(entry, year))
        .random(Factor.crossed(entry, env))
        .fit()
        .value()
        .orElseThrow();
  }

  /** env fixed; entry and entry:env random. */
  @Benchmark
  public MixedFit simple() {
    Factor entry = factor("entry");
    Factor env = Factor.crossed(factor("site"), factor("year"));
    return MixedModel.of(values)
        .fixed(env)
        .random(entry)
        .random(Factor.crossed(entry, env))
        .fit()
        .value()
        .orElseThrow();
  }

  private Factor factor(String name) {
    return Factor.of(name, Objects.requireNonNull(labels.get(name)));
  }
}
