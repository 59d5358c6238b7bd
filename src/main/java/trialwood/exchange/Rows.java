package trialwood.exchange;

import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.function.Function;
import trialwood.record.Refused;

/** The rows of one file while they are taken in. */
public final class Rows {

  private static final int CHUNK = 100;

  private final List<Row> rows;
  private final Codes codes;
  private final ImportProblems problems;

  /** Sends everything to the database, and forgets it in memory. */
  private final Runnable store;

  Rows(List<Row> rows, Codes codes, ImportProblems problems, Runnable store) {
    this.rows = rows;
    this.codes = codes;
    this.problems = problems;
    this.store = store;
  }

  /** Takes row after row; one that is refused is noted, and the next one has its turn. */
  public void each(Consumer<Row> taking) {
    for (int at = 0; at < rows.size(); at++) {
      take(rows.get(at), taking);
      // a session that keeps every row is searched anew by each query: clear it now and then
      if ((at + 1) % CHUNK == 0) {
        store.run();
      }
    }
    store.run();
  }

  /**
   * Takes row after row as well, but looks at neighbours first that have something in common.
   *
   * @param common what neighbours are compared by
   * @param ahead given such neighbours, says how each of them is taken
   */
  public void eachAmong(Function<Row, Object> common, Function<List<Row>, Consumer<Row>> ahead) {
    int from = 0;
    while (from < rows.size()) {
      Object shared = common.apply(rows.get(from));
      int until = from + 1;
      while (until < rows.size() && common.apply(rows.get(until)).equals(shared)) {
        until++;
      }
      List<Row> neighbours = rows.subList(from, until);
      Consumer<Row> taking = ahead.apply(neighbours);
      neighbours.forEach(row -> take(row, taking));
      store.run();
      from = until;
    }
  }

  private void take(Row row, Consumer<Row> taking) {
    try {
      taking.accept(row);
    } catch (Refused refused) {
      problems.add(row, refused);
    }
  }

  /** Refuses the file as a whole, for what it lacks. */
  public void refuse(Column<?> column, String sentence) {
    problems.add(0, column.name(), "", sentence);
  }

  /** Adds what a row has made, so that later rows can name it. */
  public void learn(Known known, String code, UUID id) {
    codes.add(known, code, id);
  }

  /** Whether something on record, or an earlier row, already has this code. */
  public boolean knows(Known known, String code) {
    return codes.find(known, code).isPresent();
  }
}
