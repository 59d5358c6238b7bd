package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.evidence.DueWork;
import trialwood.testing.RecordTest;

@RecordTest
@Import(PropagationSlice.class)
class ComingLooksTest {

  @Autowired Bench bench;
  @Autowired ComingLooks coming;

  /** The crop is looked at on days 7, 14, 18 and 21. */
  @BeforeEach
  void stickTwoTraysAndCloseOne() {
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    bench.tray(run, "22-A-1", bench.accession("A18-04"), 24);
    bench.counted(run, "C", bench.accession("C18-03"), 20);
    bench.flush();
  }

  @Test
  void every_look_day_of_the_days_ahead_is_told_and_the_last_one_closes() {
    assertThat(between(7, 21))
        .extracting(DueWork::what)
        .containsExactly("Look at tray 22-A-1", "Look at tray 22-A-1", "Close tray 22-A-1");
    assertThat(between(7, 21)).extracting(DueWork::due).containsExactly(day(14), day(18), day(21));
  }

  @Test
  void the_day_itself_is_not_ahead_of_it() {
    assertThat(between(14, 17)).isEmpty();
    assertThat(between(21, 90)).isEmpty();
  }

  private List<DueWork> between(int from, int until) {
    return coming.coming(day(from), day(until));
  }

  private static LocalDate day(int after) {
    return Bench.STUCK.plusDays(after);
  }
}
