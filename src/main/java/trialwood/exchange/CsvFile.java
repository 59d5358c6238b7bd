package trialwood.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import trialwood.record.Refused;

/**
 * A file of comma- or semicolon-separated values in UTF-8, with or without a byte order mark.
 *
 * @param header the first line
 * @param lines the others that are not blank
 */
record CsvFile(List<String> header, List<Line> lines) {

  private static final char BYTE_ORDER_MARK = '\ufeff';

  /**
   * @param row as a spreadsheet counts; the header is row 1
   */
  record Line(int row, List<String> cells) {

    boolean isBlank() {
      return cells.stream().allMatch(String::isBlank);
    }
  }

  /**
   * @throws Refused when it is not UTF-8, not a table, or empty
   */
  static CsvFile read(byte[] bytes) {
    String text = text(bytes);
    List<String> records = text.lines().limit(1).toList();
    if (records.isEmpty() || records.get(0).isBlank()) {
      throw new Refused("", "The file is empty. Its first line must hold the column names.");
    }
    try (CSVParser parser = CSVParser.parse(text, format(records.get(0)))) {
      List<Line> lines =
          parser.stream()
              .map(line -> new Line((int) line.getRecordNumber(), Arrays.asList(line.values())))
              .toList();
      return new CsvFile(
          lines.get(0).cells().stream().map(String::strip).toList(),
          lines.stream().skip(1).filter(line -> !line.isBlank()).toList());
    } catch (CSVException | UncheckedIOException broken) {
      throw new Refused("", "This is no table: a quotation mark is opened and not closed.");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  /** The cells of a line after the last named column; a spreadsheet pads them with nothing. */
  boolean hasTooMany(Line line) {
    return IntStream.range(header.size(), line.cells().size())
        .anyMatch(at -> !line.cells().get(at).isBlank());
  }

  private static String text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text;
    } catch (CharacterCodingException foreign) {
      throw new Refused("", "The file is not in UTF-8. Save it again as \"CSV UTF-8\".");
    }
  }

  private static CSVFormat format(String header) {
    long commas = header.chars().filter(c -> c == ',').count();
    long semicolons = header.chars().filter(c -> c == ';').count();
    return CSVFormat.RFC4180
        .builder()
        .setDelimiter(semicolons > commas ? ';' : ',')
        .setIgnoreEmptyLines(false)
        .get();
  }
}
