package trialwood.exchange;

import jakarta.persistence.EntityManager;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import trialwood.record.Recorder;
import trialwood.record.Refused;

/**
 * Takes a file into the record: all of it or nothing. Every problem is reported at once. A check
 * runs the very same code and takes it back at the end.
 */
@Service
public class Import {

  private static final Logger log = LoggerFactory.getLogger(Import.class);

  private final ImportRecords imports;
  private final EntityManager entities;
  private final JdbcTemplate jdbc;
  private final TransactionTemplate transaction;
  private final Recorder recorder;
  private final Clock clock;

  Import(
      ImportRecords imports,
      EntityManager entities,
      JdbcTemplate jdbc,
      PlatformTransactionManager transactions,
      Recorder recorder,
      Clock clock) {
    this.imports = imports;
    this.entities = entities;
    this.jdbc = jdbc;
    this.transaction = new TransactionTemplate(transactions);
    this.recorder = recorder;
    this.clock = clock;
  }

  /** Says what taking the file in would come to, and keeps nothing. */
  public ImportResult check(Sheet sheet, String fileName, byte[] file) {
    return run(sheet, fileName, file, false);
  }

  /** Takes the file in, unless anything is wrong with it. */
  public ImportResult take(Sheet sheet, String fileName, byte[] file) {
    return run(sheet, fileName, file, true);
  }

  private ImportResult run(Sheet sheet, String fileName, byte[] file, boolean keep) {
    long start = System.nanoTime();
    ImportResult result = inOneTransaction(sheet, fileName, file, keep);
    log.info(
        "{}: {} rows, {} problems, {}, {} ms",
        sheet.name(),
        result.rows(),
        result.problemCount(),
        result.kept() ? "taken in" : "nothing kept",
        (System.nanoTime() - start) / 1_000_000);
    return result;
  }

  private ImportResult inOneTransaction(Sheet sheet, String fileName, byte[] file, boolean keep) {
    return Objects.requireNonNull(
        transaction.execute(
            status -> {
              ImportProblems problems = new ImportProblems(sheet);
              int rows = read(sheet, fileName, file, problems);
              boolean kept = keep && problems.isEmpty();
              if (!kept) {
                status.setRollbackOnly();
              }
              return new ImportResult(sheet.name(), rows, kept, problems.count(), problems.list());
            }));
  }

  private int read(Sheet sheet, String fileName, byte[] bytes, ImportProblems problems) {
    try {
      CsvFile file = CsvFile.read(bytes);
      Codes codes = new Codes(jdbc);
      LocalDate today = LocalDate.now(clock);
      List<Row> read = new RowReader(sheet, codes, taken(sheet), today, problems).read(file);
      sheet.apply(new Rows(read, codes, problems, this::store));
      imports.save(new ImportRecord(sheet, fileName, file.lines().size(), recorder.by(null)));
      store();
      return file.lines().size();
    } catch (Refused refused) {
      refused.problems().forEach(problem -> problems.add(0, "", "", problem.sentence()));
      return 0;
    } catch (DataIntegrityViolationException clash) {
      problems.add(0, "", "", "Some rows contradict each other or what is on record.");
      return 0;
    }
  }

  /** The database's own rules are heard in a check, too. */
  private void store() {
    imports.flush();
    entities.clear();
  }

  /** The keys of what is on record. */
  private Map<String, Integer> taken(Sheet sheet) {
    List<Column<?>> columns = sheet.columns();
    List<Column<?>> keys = RowReader.keys(sheet);
    Map<String, Integer> taken = new HashMap<>();
    if (!keys.isEmpty()) {
      jdbc.query(
          sheet.query(),
          row -> {
            List<String> cells = new ArrayList<>();
            for (Column<?> key : keys) {
              cells.add(key.write(row.getObject(columns.indexOf(key) + 1)));
            }
            taken.put(RowReader.key(cells), 0);
          });
    }
    return taken;
  }
}
