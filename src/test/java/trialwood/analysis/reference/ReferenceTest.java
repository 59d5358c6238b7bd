package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every row of every numbered file in the folder of the system property {@code reference.dir}
 * (ours: {@code src/test/resources/reference}), computed again and compared with the row's own
 * tolerance. A method or quantity nobody knows is a failure; what is left out stands in {@link
 * LeftOut}, by name and with its reason.
 */
class ReferenceTest {

  private static final Methods METHODS = new Methods();

  private static final AtomicInteger MET = new AtomicInteger();
  private static final AtomicInteger MISSED = new AtomicInteger();
  private static final Map<String, Integer> LEFT_OUT = new TreeMap<>();

  static Stream<Row> rows() {
    return ReferenceFolder.given().rows().stream().filter(ReferenceTest::isAsked);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void the_row_is_met(Row row) {
    boolean met = false;
    try {
      Object got = METHODS.answer(row);
      met = row.meets(got);
      assertThat(met).as("%s, got %s", row, got).isTrue();
    } finally {
      (met ? MET : MISSED).incrementAndGet();
    }
  }

  @AfterAll
  static void say_how_many() {
    System.out.printf("reference rows: %d met, %d missed%n", MET.get(), MISSED.get());
    LEFT_OUT.forEach(
        (method, rows) ->
            System.out.printf(
                "left out: %s, %d rows: %s%n", method, rows, LeftOut.REASONS.get(method)));
  }

  private static boolean isAsked(Row row) {
    boolean leftOut = LeftOut.REASONS.containsKey(row.method());
    if (leftOut) {
      LEFT_OUT.merge(row.method(), 1, Integer::sum);
    }
    return !leftOut;
  }
}
