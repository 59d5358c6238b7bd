package trialwood.analysis.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A folder of numbered files with expected values, and the raw data they point to. */
public final class ReferenceFolder {

  private static final CSVFormat FORMAT =
      CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();

  private static final String OURS = "src/test/resources/reference";

  private final Path path;
  private final Map<Path, List<Row>> rows = new ConcurrentHashMap<>();
  private final Map<String, DataFile> data = new ConcurrentHashMap<>();

  private ReferenceFolder(Path path) {
    this.path = path;
  }

  /** The folder of the system property {@code reference.dir}, or our own. */
  static ReferenceFolder given() {
    return new ReferenceFolder(Path.of(System.getProperty("reference.dir", OURS)));
  }

  /** Our own folder, whatever the property says. */
  public static ReferenceFolder ours() {
    return new ReferenceFolder(Path.of(OURS));
  }

  Path path() {
    return path;
  }

  /** Every row of every numbered file, in the order of the files. */
  List<Row> rows() {
    try (Stream<Path> files = Files.list(path)) {
      return files
          .filter(file -> file.getFileName().toString().matches("\\d\\d-.*\\.csv"))
          .sorted()
          .flatMap(this::rows)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The rows of one numbered file. */
  public Stream<Row> rows(String file) {
    return rows(path.resolve(file));
  }

  /** A file of raw data. */
  public DataFile data(String name) {
    return data.computeIfAbsent(name, file -> new DataFile(records(path.resolve(file))));
  }

  /** The lines of a table of a standard; none if the folder does not hold it. */
  List<CSVRecord> standard(String name) {
    Path file = path.resolve("standards").resolve(name);
    return Files.exists(file) ? records(file) : List.of();
  }

  private Stream<Row> rows(Path file) {
    return rows.computeIfAbsent(file, this::read).stream();
  }

  private List<Row> read(Path file) {
    return records(file).stream()
        .map(
            line ->
                new Row(
                    this,
                    file.getFileName().toString(),
                    line.get("case"),
                    line.get("method"),
                    line.get("inputs"),
                    line.get("quantity"),
                    line.get("key"),
                    line.get("value"),
                    Double.parseDouble(line.get("tol_abs")),
                    Double.parseDouble(line.get("tol_rel"))))
        .toList();
  }

  private static List<CSVRecord> records(Path file) {
    try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, FORMAT)) {
      return parser.getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
