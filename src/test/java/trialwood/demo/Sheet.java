package trialwood.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** One sheet of the demo nursery, read as it lies in {@code demo-data}. */
record Sheet(String name, List<String> header, List<CSVRecord> rows) {

  static final Path FOLDER = Path.of("demo-data");

  private static final CSVFormat FORMAT =
      CSVFormat.RFC4180
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .setRecordSeparator("\n")
          .get();

  static Sheet read(String name) {
    try (var reader = Files.newBufferedReader(FOLDER.resolve(name + ".csv"));
        var parser = CSVParser.parse(reader, FORMAT)) {
      return new Sheet(name, List.copyOf(parser.getHeaderNames()), parser.getRecords());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<CSVRecord> rowsOf(String name) {
    return read(name).rows();
  }
}
