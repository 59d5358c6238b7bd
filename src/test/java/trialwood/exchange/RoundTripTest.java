package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What goes out comes back: the demo, its export, and the export of the export. */
@ExchangeTest
class RoundTripTest {

  @Autowired private Flyway flyway;
  @Autowired private Sheets sheets;
  @Autowired private Import imports;
  @Autowired private Export export;
  @Autowired private JdbcClient jdbc;

  @BeforeEach
  void an_empty_record() {
    flyway.clean();
    flyway.migrate();
  }

  @Test
  void every_sheet_comes_back_from_its_own_export_and_is_never_stored_twice() throws IOException {
    for (Sheet sheet : sheets.all()) {
      take(sheet, DemoFiles.of(sheet));
    }
    Map<Sheet, byte[]> first = exportAll();
    refuseAgain(first);

    assertThat(codes(first)).as("one code for each label, and a head").hasSize(units() + 1);

    an_empty_record();
    first.forEach(this::take);
    Map<Sheet, byte[]> second = exportAll();

    for (Sheet sheet : sheets.all()) {
      assertThat(text(second.get(sheet))).as(sheet.name()).isEqualTo(text(first.get(sheet)));
      if (!sheet.name().equals("short-codes")) {
        assertThat(text(first.get(sheet)).lines())
            .as(sheet.name())
            .hasSameSizeAs(DemoFiles.text(sheet).lines().toList());
      }
    }
  }

  /** Every row is known again, and nothing is on record that was not there before. */
  private void refuseAgain(Map<Sheet, byte[]> onRecord) throws IOException {
    onRecord.forEach(
        (sheet, file) -> {
          ImportResult again = imports.take(sheet, sheet.fileName(), file);
          assertThat(again.kept()).as(sheet.name()).isEqualTo(again.rows() == 0);
          assertThat(again.problemCount()).as(sheet.name()).isEqualTo(again.rows());
        });
    exportAll()
        .forEach(
            (sheet, file) ->
                assertThat(text(file)).as(sheet.name()).isEqualTo(text(onRecord.get(sheet))));
  }

  private void take(Sheet sheet, byte[] file) {
    ImportResult result = imports.take(sheet, sheet.fileName(), file);
    assertThat(result.problems()).as(sheet.name()).isEmpty();
    assertThat(result.kept()).as(sheet.name()).isTrue();
  }

  private Map<Sheet, byte[]> exportAll() throws IOException {
    Map<Sheet, byte[]> files = new LinkedHashMap<>();
    for (Sheet sheet : sheets.all()) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      export.write(sheet, out);
      files.put(sheet, out.toByteArray());
    }
    return files;
  }

  /** The demo's labels get their codes as they are taken in. */
  private static List<String> codes(Map<Sheet, byte[]> files) {
    return files.entrySet().stream()
        .filter(file -> file.getKey().name().equals("short-codes"))
        .flatMap(file -> text(file.getValue()).lines())
        .toList();
  }

  private int units() {
    return jdbc.sql("select count(*) from unit").query(Integer.class).single();
  }

  private static String text(byte[] file) {
    return new String(file, StandardCharsets.UTF_8);
  }
}
