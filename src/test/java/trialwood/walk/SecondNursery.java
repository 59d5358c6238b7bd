package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Set;
import java.util.regex.Pattern;
import org.springframework.boot.test.context.TestComponent;
import trialwood.exchange.Import;
import trialwood.exchange.ImportResult;
import trialwood.exchange.Sheet;
import trialwood.exchange.Sheets;
import trialwood.people.Household;
import trialwood.people.Persons;
import trialwood.people.Role;

/** Another nursery than the demo's: another genus, other codes, a bench that is due today. */
@TestComponent
class SecondNursery {

  static final String PASSWORD = "under the hedge by the mill";

  private static final Pattern DAY = Pattern.compile("\\{today(?:-(\\d+))?}");

  private final Sheets sheets;
  private final Import imports;
  private final Household household;
  private final Persons persons;
  private final Clock clock;

  SecondNursery(Sheets sheets, Import imports, Household household, Persons persons, Clock clock) {
    this.sheets = sheets;
    this.imports = imports;
    this.household = household;
    this.persons = persons;
    this.clock = clock;
  }

  void moveIn() throws IOException {
    for (Sheet sheet : sheets.all()) {
      try (InputStream file =
          SecondNursery.class.getResourceAsStream("/second-nursery/" + sheet.fileName())) {
        if (file != null) {
          take(sheet, new String(file.readAllBytes(), StandardCharsets.UTF_8));
        }
      }
    }
    open("odile", Role.BREEDER, "OB");
    open("piet", Role.BENCH, "PF");
    open("nan", Role.DOSSIER, "NV");
  }

  /** Takes more rows in on a sheet. */
  void take(String sheet, String text) {
    take(sheets.named(sheet).orElseThrow(), text);
  }

  private void take(Sheet sheet, String text) {
    LocalDate today = LocalDate.now(clock);
    String dated =
        DAY.matcher(text)
            .replaceAll(
                day ->
                    today
                        .minusDays(day.group(1) == null ? 0 : Long.parseLong(day.group(1)))
                        .toString());
    ImportResult result =
        imports.take(sheet, sheet.fileName(), dated.getBytes(StandardCharsets.UTF_8));
    assertThat(result.problems()).as(sheet.fileName()).isEmpty();
  }

  private void open(String username, Role role, String initials) {
    household.open(
        username, PASSWORD, role, persons.findByInitials(initials).orElseThrow().id(), Set.of());
  }
}
