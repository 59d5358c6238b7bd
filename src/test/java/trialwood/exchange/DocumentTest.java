package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** The guide to the files says what the sheets say. */
@ExchangeTest
class DocumentTest {

  @Autowired private Sheets sheets;

  @Test
  void every_sheet_is_described_as_it_is_declared() throws IOException {
    String guide = Files.readString(Path.of("docs", "exchange.md"));
    for (Sheet sheet : sheets.all()) {
      assertThat(guide).as("docs/exchange.md, " + sheet.name()).contains(described(sheet));
    }
    assertThat(guide.lines().filter(line -> line.startsWith("### "))).hasSize(sheets.all().size());
  }

  private static String described(Sheet sheet) {
    return sheet.columns().stream()
        .map(DocumentTest::line)
        .collect(
            Collectors.joining(
                "\n",
                "### %s\n\nFile `%s`.\n\n| Column | Holds | Filled | Meaning |\n|---|---|---|---|\n"
                    .formatted(sheet.name(), sheet.fileName()),
                "\n"));
  }

  private static String line(Column<?> column) {
    String filled =
        switch (column.need()) {
          case MAY -> "";
          case MUST -> "yes";
          case LATER -> "may be missing";
          case KEY -> "yes, key";
          case TELLS -> "key";
        };
    return "| `%s` | %s | %s | %s |"
        .formatted(column.name(), column.kind().word(), filled, column.meaning());
  }
}
