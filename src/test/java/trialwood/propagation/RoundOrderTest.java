package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import jakarta.persistence.EntityManager;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.testing.RecordTest;

/** The round meets a tray where it stands on that day. */
@RecordTest
@Import(PropagationSlice.class)
class RoundOrderTest {

  static final LocalDate MOVED = Bench.STUCK.plusDays(10);

  @Autowired Bench bench;
  @Autowired EntityManager records;
  @Autowired TrayMoving moving;
  @Autowired Rounds rounds;

  @Test
  void a_tray_that_was_set_elsewhere_is_met_at_its_new_place() {
    trialwood.site.Bench north = stand("M1");
    trialwood.site.Bench south = stand("M2");
    StickingRun run = bench.run("R22", Bench.STUCK, bench.accession("CK-B"));
    UUID white = bench.accession("A18-04");
    UUID first = bench.tray(run, "22-A-1", white, 24).unitId();
    bench.tray(run, "22-A-2", white, 24);
    records.persist(
        new BenchBlock(Objects.requireNonNull(run.id()), "1", Objects.requireNonNull(north.id())));
    StickingRun other = bench.run("R22B", Bench.STUCK, bench.accession("CK-C"));
    bench.tray(other, "22-B-1", white, 24);
    records.persist(
        new BenchBlock(
            Objects.requireNonNull(other.id()), "1", Objects.requireNonNull(south.id())));
    moving.move(first, south, 14, MOVED, "too near the boiler", null);
    records.flush();

    assertThat(rounds.on(MOVED.minusDays(1)).trays())
        .extracting(RoundTray::tray, RoundTray::stand)
        .containsExactly(
            tuple("22-A-1", "block 1"), tuple("22-A-2", "block 1"), tuple("22-B-1", "block 1"));
    assertThat(rounds.on(MOVED).trays())
        .extracting(RoundTray::tray, RoundTray::stand, RoundTray::bench)
        .containsExactly(
            tuple("22-A-2", "block 1", null),
            tuple("22-A-1", "place M2 14", "mist house"),
            tuple("22-B-1", "block 1", null));
  }

  private trialwood.site.Bench stand(String code) {
    trialwood.site.Bench stand =
        new trialwood.site.Bench(code, "bench " + code, "mist house", 20, null);
    records.persist(stand);
    return stand;
  }
}
