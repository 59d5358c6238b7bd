package trialwood.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Writes a sheet as a spreadsheet opens it right: UTF-8 with a byte order mark, ISO dates, a
 * decimal point, no text that would run as a formula. The import takes the file back as it is.
 */
@Service
public class Export {

  private static final char BYTE_ORDER_MARK = '\ufeff';

  private final JdbcTemplate jdbc;

  Export(JdbcTemplate jdbc) {
    this.jdbc = jdbc;
  }

  /** All rows of a sheet. */
  @Transactional(readOnly = true)
  public void write(Sheet sheet, OutputStream out) throws IOException {
    CSVPrinter printer = open(sheet, out);
    List<Column<?>> columns = sheet.columns();
    jdbc.query(
        sheet.query(),
        row -> {
          try {
            for (int at = 0; at < columns.size(); at++) {
              printer.print(columns.get(at).write(row.getObject(at + 1)));
            }
            printer.println();
          } catch (IOException gone) {
            throw new UncheckedIOException(gone);
          }
        });
    printer.flush();
  }

  /** The column names alone, for somebody who begins a file. */
  public void writeTemplate(Sheet sheet, OutputStream out) throws IOException {
    open(sheet, out).flush();
  }

  private static CSVPrinter open(Sheet sheet, OutputStream out) throws IOException {
    Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    writer.write(BYTE_ORDER_MARK);
    CSVPrinter printer = new CSVPrinter(writer, CSVFormat.RFC4180);
    printer.printRecord(sheet.columns().stream().map(Column::name));
    return printer;
  }
}
