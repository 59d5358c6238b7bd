package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.RepeatedTest;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionTemplate;
import trialwood.record.Submissions;
import trialwood.testing.RecordTest;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;

/** Two phones close one tray in the same moment, each in a transaction of its own. */
@RecordTest
@Import(PropagationSlice.class)
@Transactional(propagation = Propagation.NOT_SUPPORTED)
@DirtiesContext
class TwoPhonesTest {

  @Autowired Bench bench;
  @Autowired Closing closing;
  @Autowired FinalCounts counts;
  @Autowired Doubts doubts;
  @Autowired Submissions submissions;
  @Autowired PlatformTransactionManager transactions;

  UUID tray;

  @BeforeEach
  void stickATray() {
    String nth = UUID.randomUUID().toString().substring(0, 8);
    tray =
        new TransactionTemplate(transactions)
            .execute(
                work -> {
                  StickingRun run =
                      bench.run("R-" + nth, Bench.STUCK, bench.accession("CK-" + nth));
                  return bench.tray(run, "T-" + nth, bench.accession("A-" + nth), 24).unitId();
                });
  }

  @RepeatedTest(5)
  void two_different_counts_are_both_kept_and_asked_about() throws Exception {
    assertThat(atOnce(phone(UUID.randomUUID(), 21), phone(UUID.randomUUID(), 22))).isEqualTo(2);
    assertThat(counts.standing(tray)).extracting(FinalCount::rooted).containsOnly(21, 22);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray))
        .singleElement()
        .extracting(Doubt::question)
        .asString()
        .startsWith("Two final counts");
  }

  @RepeatedTest(5)
  void one_form_sent_twice_is_one_count() throws Exception {
    UUID key = UUID.randomUUID();
    assertThat(atOnce(phone(key, 21), phone(key, 21))).isEqualTo(1);
    assertThat(counts.findByTrayIdOrderByRecordedRecordedAt(tray)).hasSize(1);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).isEmpty();
  }

  @RepeatedTest(5)
  void two_phones_that_say_the_same_are_one_count() throws Exception {
    assertThat(atOnce(phone(UUID.randomUUID(), 21), phone(UUID.randomUUID(), 21))).isEqualTo(2);
    assertThat(counts.findByTrayIdOrderByRecordedRecordedAt(tray)).hasSize(1);
    assertThat(doubts.findByUnitIdOrderByOnDate(tray)).isEmpty();
  }

  /** A form with its key, as it is stored; answers whether it was the first with that key. */
  private Callable<Boolean> phone(UUID key, int rooted) {
    return () ->
        new TransactionTemplate(transactions)
            .execute(
                work -> {
                  boolean first = submissions.first(key);
                  if (first) {
                    closing.finalCount(tray, Bench.closing(Bench.COUNTED, rooted), null);
                  }
                  return first;
                });
  }

  private static long atOnce(Callable<Boolean> one, Callable<Boolean> other) throws Exception {
    CyclicBarrier together = new CyclicBarrier(2);
    ExecutorService phones = Executors.newFixedThreadPool(2);
    try {
      List<Future<Boolean>> answers =
          List.of(one, other).stream()
              .map(
                  phone ->
                      phones.submit(
                          () -> {
                            together.await(20, TimeUnit.SECONDS);
                            return phone.call();
                          }))
              .toList();
      long firsts = 0;
      for (Future<Boolean> answer : answers) {
        firsts += answer.get(30, TimeUnit.SECONDS) ? 1 : 0;
      }
      return firsts;
    } finally {
      phones.shutdownNow();
    }
  }
}
