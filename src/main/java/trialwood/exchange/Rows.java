package trialwood.exchange;

import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.orm.jpa.EntityManagerFactoryUtils;
import trialwood.record.Refused;

/** The rows of one file while they are taken in. */
public final class Rows {

  private static final int CHUNK = 500;

  private final List<Row> rows;
  private final Codes codes;
  private final ImportProblems problems;
  private final EntityManager entities;

  Rows(List<Row> rows, Codes codes, ImportProblems problems, EntityManager entities) {
    this.rows = rows;
    this.codes = codes;
    this.problems = problems;
    this.entities = entities;
  }

  /** Takes row after row; one that is refused is noted, and the next one has its turn. */
  public void each(Consumer<Row> taking) {
    for (int at = 0; at < rows.size(); at++) {
      try {
        taking.accept(rows.get(at));
      } catch (Refused refused) {
        problems.add(rows.get(at), refused);
      }
      // a session that keeps every row is searched anew by each query: clear it now and then
      if ((at + 1) % CHUNK == 0 && !store()) {
        return;
      }
    }
    store();
  }

  /** Adds what a row has made, so that later rows can name it. */
  public void learn(Known known, String code, UUID id) {
    codes.add(known, code, id);
  }

  /** Whether something on record, or an earlier row, already has this code. */
  public boolean knows(Known known, String code) {
    return codes.find(known, code).isPresent();
  }

  private boolean store() {
    try {
      entities.flush();
      entities.clear();
      return true;
    } catch (RuntimeException failed) {
      RuntimeException translated =
          EntityManagerFactoryUtils.convertJpaAccessExceptionIfPossible(failed);
      if (translated instanceof DataIntegrityViolationException) {
        problems.add(0, "", "", "Some rows contradict each other or what is on record.");
        return false;
      }
      throw failed;
    }
  }
}
