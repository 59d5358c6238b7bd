package trialwood.propagation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.record.Recorder;
import trialwood.testing.RecordTest;
import trialwood.unit.Identity;
import trialwood.unit.Tie;

@RecordTest
@Import(PropagationSlice.class)
class RootingEvidenceTest {

  static final LocalDate JULY = LocalDate.of(2022, 7, 20);

  @Autowired Bench bench;
  @Autowired TrayRecords records;
  @Autowired RootingEvidence rooting;
  @Autowired RootingTimeEvidence time;
  @Autowired Identity identity;
  @Autowired Recorder recorder;

  @Test
  void three_even_trays_are_surer_than_three_uneven_ones_of_nearly_the_same_sum() {
    UUID check = bench.accession("CK-B");
    UUID even = bench.accession("C18-03");
    UUID uneven = bench.accession("A18-04");
    StickingRun run = bench.run("R22", Bench.STUCK, check);
    bench.counted(run, "CK-B", check, 23, 22, 23);
    bench.counted(run, "C18-03", even, 22, 21, 23);
    bench.counted(run, "A18-04", uneven, 23, 22, 9);

    Map<UUID, Evidence> found = ask("propagation.rooted", Set.of(even, uneven), JULY);

    // 0.96 and 0.40 by independent quadrature: the rows of these trays in 15-tray-posterior.csv
    assertThat(chance(found.get(even), 80)).isCloseTo(0.96, within(0.005));
    assertThat(chance(found.get(uneven), 80)).isCloseTo(0.40, within(0.005));
    assertThat(found.get(uneven).value()).isCloseTo(75.0, within(1e-9));
    assertThat(found.get(uneven).counted()).isEqualTo("54 of 72, 3 trays, run R22");
    assertThat(found.get(even).discardBarred()).isFalse();
  }

  @Test
  void a_run_whose_check_failed_bars_a_discard_and_gives_way_to_an_earlier_valid_run() {
    UUID check = bench.accession("CK-B");
    UUID candidate = bench.accession("C18-01");
    StickingRun good = bench.run("R21", Bench.STUCK.minusYears(1), check);
    bench.counted(good, "CK-B", check, 23, 24, 22);
    bench.counted(good, "C18-01", candidate, 21, 20, 22);
    StickingRun late = bench.run("R22L", Bench.STUCK, check);
    bench.counted(late, "CK-B", check, 11, 9, 13);
    bench.counted(late, "C18-01", candidate, 10, 12, 9);

    Evidence told = ask("propagation.rooted", Set.of(candidate), JULY).get(candidate);

    assertThat(told.counted()).contains("63 of 72").contains("R21");
    assertThat(told.occasions()).hasSize(1);
  }

  @Test
  void in_a_void_run_alone_the_number_stands_but_discards_nobody() {
    UUID check = bench.accession("CK-B");
    UUID candidate = bench.accession("D18-01");
    StickingRun late = bench.run("R22L", Bench.STUCK, check);
    bench.counted(late, "CK-B", check, 11, 9, 13);
    bench.counted(late, "D18-01", candidate, 13, 11, 12);

    Evidence told = ask("propagation.rooted", Set.of(candidate), JULY).get(candidate);

    assertThat(told.discardBarred()).isTrue();
    assertThat(told.remarks()).singleElement().asString().contains("rooted 33 of 72");
    assertThat(told.occasions()).isEmpty();
  }

  @Test
  void a_void_tray_counts_for_nothing_from_the_day_it_was_declared() {
    UUID check = bench.accession("CK-B");
    UUID candidate = bench.accession("A18-04");
    StickingRun run = bench.run("R22", Bench.STUCK, check);
    bench.counted(run, "CK-B", check, 23, 22, 23);
    List<Tray> trays = bench.counted(run, "A18-04", candidate, 23, 22, 9);
    records.rule(trays.get(2).unitId(), LocalDate.of(2022, 10, 12), false, "clogged nozzle", null);
    bench.flush();

    assertThat(ask("propagation.rooted", Set.of(candidate), JULY).get(candidate).n()).isEqualTo(72);
    assertThat(
            ask("propagation.rooted", Set.of(candidate), LocalDate.of(2022, 11, 1))
                .get(candidate)
                .counted())
        .contains("45 of 48");
  }

  @Test
  void two_labels_exchanged_are_put_right_by_ties_and_every_number_follows() {
    UUID check = bench.accession("CK-B");
    UUID ferry = bench.accession("C18-03");
    UUID harbor = bench.accession("C18-04");
    StickingRun run = bench.run("R22", Bench.STUCK, check);
    bench.counted(run, "CK-B", check, 23, 22, 23);
    Tray one = bench.counted(run, "C18-03", ferry, 22).get(0);
    Tray other = bench.counted(run, "C18-04", harbor, 12).get(0);

    identity.say(List.of(said(one.unitId(), harbor), said(other.unitId(), ferry)));

    Map<UUID, Evidence> found = ask("propagation.rooted", Set.of(ferry, harbor), JULY);
    assertThat(found.get(ferry).counted()).contains("12 of 24");
    assertThat(found.get(harbor).counted()).contains("22 of 24");

    identity.say(List.of(said(one.unitId(), ferry), said(other.unitId(), harbor)));
    assertThat(ask("propagation.rooted", Set.of(ferry), JULY).get(ferry).counted())
        .contains("22 of 24");
  }

  @Test
  void half_rooted_between_two_looks_is_a_bracket() {
    // an easy softwood crop is well rooted 18 to 24 days after sticking (common practice, no
    // source)
    UUID check = bench.accession("CK-B");
    UUID candidate = bench.accession("A18-01");
    StickingRun run = bench.run("R22", Bench.STUCK, check);
    UUID tray = bench.tray(run, "T1", candidate, 24).unitId();
    records.look(tray, new NewLook(Bench.STUCK.plusDays(18), 5, 2, 24, 0, null), null);
    records.look(tray, new NewLook(Bench.STUCK.plusDays(21), 5, 4, 24, 0, null), null);
    bench.flush();

    Evidence told =
        time.evidence(new Ask("propagation.days-to-root", null, null), Set.of(candidate), JULY)
            .get(candidate);

    assertThat(told.value()).isEqualTo(21.0);
    assertThat(told.counted()).isEqualTo("after day 18, by day 21, run R22");
  }

  private Tie said(UUID unit, UUID accession) {
    return new Tie(
        unit, accession, Bench.STUCK, null, "labels exchanged", "flower", JULY, recorder.by(null));
  }

  private Map<UUID, Evidence> ask(String metric, Set<UUID> accessions, LocalDate asOf) {
    return rooting.evidence(new Ask(metric, null, null), accessions, asOf);
  }

  private static double chance(Evidence evidence, double percent) {
    return Objects.requireNonNull(evidence.belief()).chanceAtLeast(percent);
  }
}
