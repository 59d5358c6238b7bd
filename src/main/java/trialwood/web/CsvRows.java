package trialwood.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;

/**
 * Rows of a list as a file that a spreadsheet opens right: UTF-8 with its mark, and text that would
 * start a formula made harmless by an apostrophe.
 */
public final class CsvRows {

  private static final String BYTE_ORDER_MARK = "\ufeff";

  private CsvRows() {}

  /** The file's text; numbers and dates are written as they are. */
  public static String of(
      List<String> head, List<? extends List<? extends @Nullable Object>> rows) {
    StringBuilder file = new StringBuilder(BYTE_ORDER_MARK);
    try (CSVPrinter printer = new CSVPrinter(file, CSVFormat.DEFAULT)) {
      printer.printRecord(head);
      for (List<? extends @Nullable Object> row : rows) {
        printer.printRecord(row.stream().map(CsvRows::harmless).toList());
      }
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
    return file.toString();
  }

  private static Object harmless(@Nullable Object cell) {
    if (cell instanceof String text && text.matches("(?s)[=+\\-@\\t\\r].*")) {
      return "'" + text;
    }
    return cell == null ? "" : cell;
  }
}
