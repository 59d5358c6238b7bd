package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static trialwood.container.Nursery.AUTUMN;
import static trialwood.container.Nursery.POTTED;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.mockito.Mockito;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.bean.override.mockito.MockitoSpyBean;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.crop.Trait;
import trialwood.evidence.Ask;
import trialwood.evidence.DueWork;
import trialwood.evidence.Evidence;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.Metric;
import trialwood.evidence.WorkState;
import trialwood.lineage.CheckRole;

@ContainerTest
class ContainerEvidenceTest {

  private static final LocalDate SPRING = LocalDate.of(2023, 3, 28);
  private static final LocalDate SEEN = LocalDate.of(2022, 9, 14);

  @Autowired Nursery nursery;
  @Autowired Shifting shifting;
  @Autowired Tending tending;
  @Autowired LotRecords records;
  @Autowired ContainerEvidence evidence;
  @Autowired ContainerLife life;
  @Autowired ContainerWork work;
  @MockitoSpyBean JdbcClient jdbc;

  private @Nullable Evidence of(String accession, String metric, LocalDate asOf) {
    return of(accession, new Ask(metric, null, null), asOf);
  }

  private @Nullable Evidence of(String accession, Ask ask, LocalDate asOf) {
    UUID id = nursery.accession(accession);
    return evidence.evidence(ask, Set.of(id), asOf).get(id);
  }

  private UUID countedLot(String label, String accession, int lost, int saleable) {
    UUID lot = nursery.lot(label, accession, 20);
    if (lost > 0) {
      records.lose(lot, new NewLoss(LocalDate.of(2022, 9, 21), lost, "roots brown", null));
    }
    records.count(lot, new NewCount(AUTUMN, 20 - lost, saleable, null, null));
    return lot;
  }

  @Test
  void losses_are_counted_against_what_was_potted() {
    countedLot("L1", "C18-03", 1, 16);

    Evidence lost = of("C18-03", "container.lost", AUTUMN);

    assertThat(lost.value()).isEqualTo(1);
    assertThat(lost.n()).isEqualTo(20);
    assertThat(lost.counted()).isEqualTo("1 of 20 potted");
    assertThat(of("C18-03", "container.lost-shifted", AUTUMN)).isNull();
  }

  @Test
  void a_grading_of_the_same_day_goes_before_the_count() {
    UUID lot = countedLot("L1", "C18-03", 0, 16);
    tending.grade(lot, new NewGrade(AUTUMN, 9, 2, 1, 4, null), null);

    assertThat(of("C18-03", "container.saleable", AUTUMN).value()).isEqualTo(75);
    assertThat(of("C18-03", "container.saleable", AUTUMN).counted()).isEqualTo("9 of 12");
    assertThat(of("C18-03", "container.root-ball", AUTUMN).value()).isEqualTo(4);
    assertThat(of("C18-03", "container.root-ball-shifted", AUTUMN)).isNull();
  }

  @Test
  void who_came_through_the_winter_is_read_from_the_counts_before_and_after_it() {
    UUID lot = countedLot("L1", "C18-03", 0, 16);
    LocalDate winter = LocalDate.of(2023, 1, 20);
    records.letGo(lot, new NewOutgoing(winter, 2, Way.DISPOSED, null, null, "shown", null));
    LocalDate april = LocalDate.of(2023, 4, 3);
    records.lose(lot, new NewLoss(april, 1, "dead after winter", null));
    assertThat(of("C18-03", "container.wintered", april)).isNull();
    records.count(lot, new NewCount(april, 17, null, null, null));

    assertThat(of("C18-03", "container.wintered", april).value()).isEqualTo(95);
    assertThat(of("C18-03", "container.wintered", april).counted()).isEqualTo("19 of 20");
    assertThat(of("C18-03", "container.wintered", april.minusDays(1))).isNull();
  }

  @Test
  void a_lot_nobody_counted_is_no_record_and_not_a_lot_without_losses() {
    nursery.lot("L1", "C18-03", 20);

    assertThat(of("C18-03", "container.lost", AUTUMN)).isNull();
  }

  @Test
  void what_a_count_did_not_find_is_lost_though_nobody_recorded_it() {
    UUID lot = nursery.lot("L1", "C18-03", 20);
    records.count(lot, new NewCount(AUTUMN, 17, null, null, null));

    Evidence lost = of("C18-03", "container.lost", AUTUMN);

    assertThat(lost.value()).isEqualTo(3);
    assertThat(lost.remarks()).singleElement().asString().startsWith("3 were missing");
  }

  // Wilson's closed form for 16 of 19 at 95 %, worked by hand: 62.4 to 94.5 %
  @Test
  void saleable_is_a_share_of_those_alive() {
    countedLot("L1", "C18-03", 1, 16);

    Evidence saleable = of("C18-03", "container.saleable", AUTUMN);

    assertThat(saleable.value()).isCloseTo(84.2105, within(1e-4));
    assertThat(saleable.interval().low()).isCloseTo(62.4, within(0.05));
    assertThat(saleable.interval().high()).isCloseTo(94.5, within(0.05));
  }

  @Test
  void records_of_a_later_day_are_left_out() {
    countedLot("L1", "C18-03", 1, 16);

    assertThat(of("C18-03", "container.lost", AUTUMN.minusDays(1))).isNull();
  }

  @Test
  void shifted_plants_are_told_apart_from_those_out_of_trays() {
    UUID lot = countedLot("L1", "C18-03", 1, 16);
    Pots pots = new Pots(nursery.largePots(), new BigDecimal("9.5"), SPRING, 12, null, null);
    UUID larger = shifting.shift(lot, new NewShift("L3", pots, List.of(), null), null);
    LocalDate autumn = LocalDate.of(2023, 10, 10);
    records.count(larger, new NewCount(autumn, 12, 9, null, null));

    assertThat(of("C18-03", "container.lost-shifted", autumn).value()).isZero();
    assertThat(of("C18-03", "container.saleable-shifted", autumn).value()).isEqualTo(75);
    assertThat(of("C18-03", "container.lost", autumn).value()).isEqualTo(1);
    assertThat(life.events(nursery.accession("C18-03")))
        .extracting(LifeEvent::sentence)
        .containsExactlyInAnyOrder(
            "20 potted in #1, lot L1",
            "19 alive in #1, 16 saleable, lot L1",
            "12 shifted to #3, lot L3",
            "12 alive in #3, 9 saleable, lot L3");
  }

  @Test
  void mean_and_spread_are_of_the_numbered_plants() {
    UUID lot = nursery.lot("L1", "C18-03", 20);
    List<UUID> plants = nursery.numbered(lot, "L1", 4);
    Trait height = nursery.height();
    nursery.measured(plants, height, POTTED.plusDays(3), 20, 20, 20, 20);
    nursery.measured(plants, height, SEEN, 40, 50, 50, 60);

    // sd of 40, 50, 50, 60 is sqrt(200/3) = 8.164966
    assertThat(of("C18-03", new Ask("container.mean", height.id(), null), AUTUMN).value())
        .isEqualTo(50);
    assertThat(of("C18-03", new Ask("container.spread", height.id(), null), AUTUMN).value())
        .isCloseTo(16.329932, within(1e-6));
  }

  // t test of (40, 50, 60) against (41, 45, 49, 53) by hand: means 50 and 47, pooled variance
  // (200 + 80)/5 = 56, standard error 7.483315 * sqrt(1/3 + 1/4) = 5.715476, 5 df
  @Test
  void the_check_is_compared_in_pots_of_the_same_class_and_year() {
    Trait height = nursery.height();
    nursery.check("CK-1", CheckRole.MARKET);
    nursery.measured(
        nursery.numbered(nursery.lot("L1", "C18-03", 20), "L1", 3), height, SEEN, 40, 50, 60);
    List<UUID> checks = nursery.numbered(nursery.lot("K1", "CK-1", 10), "K1", 4);
    nursery.measured(checks, height, SEEN, 41, 45, 49, 53);
    nursery.measured(checks, height, SEEN.plusYears(1), 90, 90, 90, 90);

    Evidence against =
        of(
            "C18-03",
            new Ask("container.against-check", height.id(), CheckRole.MARKET),
            SEEN.plusYears(1));

    assertThat(against.value()).isCloseTo(3, within(1e-9));
    // qt(0.975, 5) = 2.570582 (R)
    assertThat(against.interval().high()).isCloseTo(3 + 2.570582 * 5.715476, within(1e-4));
    assertThat(against.comparison()).contains("50.0", "47.0", "lot K1");
  }

  @Test
  void without_plants_of_the_check_there_is_no_comparison() {
    Trait height = nursery.height();
    nursery.check("CK-1", CheckRole.MARKET);
    nursery.measured(
        nursery.numbered(nursery.lot("L1", "C18-03", 20), "L1", 3), height, SEEN, 40, 50, 60);

    Evidence against =
        of("C18-03", new Ask("container.against-check", height.id(), CheckRole.MARKET), AUTUMN);

    assertThat(against.isRecorded()).isFalse();
    assertThat(against.method()).contains("market check has no values");
  }

  @Test
  void plants_in_flower_are_a_share_of_those_looked_at() {
    Trait flowers = nursery.flowers();
    nursery.measured(
        nursery.numbered(nursery.lot("L1", "C18-03", 20), "L1", 4), flowers, SEEN, 0, 7, 3, 14);

    assertThat(of("C18-03", new Ask("container.flowering", flowers.id(), null), AUTUMN).value())
        .isEqualTo(75);
  }

  @Test
  void labels_found_exchanged_move_every_number() {
    Trait height = nursery.height();
    UUID labelled3 = countedLot("L3", "C18-03", 1, 16);
    UUID labelled4 = countedLot("L4", "C18-04", 4, 8);
    List<UUID> plants3 = nursery.numbered(labelled3, "L3", 2);
    List<UUID> plants4 = nursery.numbered(labelled4, "L4", 2);
    nursery.measured(plants3, height, SEEN, 40, 42);
    nursery.measured(plants4, height, SEEN, 60, 62);

    nursery.swapped(labelled3, "C18-04");
    nursery.swapped(labelled4, "C18-03");
    plants3.forEach(plant -> nursery.swapped(plant, "C18-04"));
    plants4.forEach(plant -> nursery.swapped(plant, "C18-03"));

    assertThat(of("C18-03", "container.lost", AUTUMN).value()).isEqualTo(4);
    assertThat(of("C18-04", "container.lost", AUTUMN).value()).isEqualTo(1);
    assertThat(of("C18-03", "container.saleable", AUTUMN).value()).isEqualTo(50);
    assertThat(of("C18-03", new Ask("container.mean", height.id(), null), AUTUMN).value())
        .isEqualTo(61);
  }

  @Test
  void a_superseded_count_is_left_out(@Autowired LotCounts counts) {
    UUID lot = countedLot("L1", "C18-03", 0, 16);
    UUID earlier = counts.findByLotIdOrderByOnDate(lot).get(0).id();

    records.correctCount(earlier, new NewCount(AUTUMN, 20, 10, null, null), "read the wrong line");

    assertThat(of("C18-03", "container.saleable", AUTUMN).value()).isEqualTo(50);
  }

  @Test
  void living_lots_ask_for_a_count_in_april_and_october() {
    countedLot("L1", "C18-03", 1, 16);

    assertThat(work.due(LocalDate.of(2022, 10, 31))).isEmpty();
    assertThat(work.due(LocalDate.of(2023, 4, 3)))
        .singleElement()
        .satisfies(
            due -> {
              assertThat(due.due()).isEqualTo("2023-04-30");
              assertThat(due.why()).isEqualTo("last counted on 12\u00a0Oct\u00a02022");
              assertThat(due.href()).isEqualTo("/containers/L1/count");
            });
  }

  /** Covered late in November, uncovered in April: common practice, no source. */
  @Test
  void living_lots_ask_to_be_covered_in_november_and_uncovered_in_april(
      @Autowired CoverWork covers) {
    UUID lot = countedLot("L1", "C18-03", 1, 16);
    LocalDate november = LocalDate.of(2022, 11, 20);
    assertThat(covers.due(november))
        .extracting(DueWork::what, DueWork::href)
        .containsExactly(tuple("Cover C18-03 in lot L1", "/containers/L1/winter"));

    tending.care(
        lot, new NewCare(november, CareKind.COVERED, null, "house 2", null, null, null), null);
    assertThat(covers.due(november)).isEmpty();
    LocalDate april = LocalDate.of(2023, 4, 3);
    assertThat(covers.due(april))
        .extracting(DueWork::what)
        .containsExactly("Uncover C18-03 in lot L1");

    tending.care(lot, new NewCare(april, CareKind.UNCOVERED, null, null, null, 0, null), null);
    assertThat(covers.due(april)).isEmpty();
  }

  @Test
  void a_count_nobody_made_is_asked_for_two_weeks_longer_and_then_was_missed_since_the_first() {
    countedLot("L1", "C18-03", 1, 16);

    DueWork late = work.due(LocalDate.of(2024, 5, 14)).get(0);
    assertThat(late.due()).isEqualTo("2024-04-30");
    assertThat(late.state(LocalDate.of(2024, 5, 14))).isEqualTo(WorkState.OVERDUE);
    DueWork missed = work.due(LocalDate.of(2024, 5, 15)).get(0);
    assertThat(missed.due()).isEqualTo("2023-04-30");
    assertThat(missed.state(LocalDate.of(2024, 5, 15))).isEqualTo(WorkState.MISSED);
  }

  @Test
  void the_next_month_of_counting_comes_up_before_it_is_here() {
    countedLot("L1", "C18-03", 1, 16);
    LocalDate march = LocalDate.of(2023, 3, 20);

    assertThat(work.coming(march, march.plusDays(7))).isEmpty();
    assertThat(work.coming(march, march.plusDays(14)))
        .singleElement()
        .satisfies(
            count -> {
              assertThat(count.from()).isEqualTo("2023-04-01");
              assertThat(count.state(march)).isEqualTo(WorkState.COMING);
            });
  }

  @Test
  void a_lot_of_a_discarded_candidate_is_to_be_cleared_and_not_counted(
      @Autowired Candidates candidates) {
    countedLot("L1", "C18-03", 1, 16);
    Candidate gone = new Candidate(nursery.accession("C18-03"));
    gone.discardAt(Stage.FIELD);
    candidates.saveAndFlush(gone);

    assertThat(work.due(LocalDate.of(2023, 4, 3)))
        .singleElement()
        .satisfies(
            clear -> {
              assertThat(clear.what()).isEqualTo("Clear lot L1");
              assertThat(clear.href()).isEqualTo("/containers/L1/out");
            });
    assertThat(work.coming(LocalDate.of(2023, 3, 20), LocalDate.of(2023, 4, 3))).isEmpty();
  }

  private int statements(Ask ask, Set<UUID> accessions) {
    Mockito.clearInvocations(jdbc);
    evidence.evidence(ask, accessions, AUTUMN);
    return Mockito.mockingDetails(jdbc).getInvocations().size();
  }

  @Test
  void a_review_of_many_costs_as_many_statements_as_a_review_of_one() {
    Trait height = nursery.height();
    nursery.check("CK-1", CheckRole.MARKET);
    List<String> codes = List.of("C18-01", "C18-02", "C18-03", "C18-04", "C18-05");
    for (String code : codes) {
      UUID lot = countedLot("L-" + code, code, 1, 16);
      nursery.measured(nursery.numbered(lot, "L-" + code, 3), height, SEEN, 40, 50, 60);
    }
    Set<UUID> one = Set.of(nursery.accession("C18-01"));
    Set<UUID> all = codes.stream().map(nursery::accession).collect(Collectors.toSet());

    for (Metric metric : evidence.metrics()) {
      Ask ask = new Ask(metric.key(), height.id(), CheckRole.MARKET);
      assertThat(statements(ask, all))
          .as(metric.key())
          .isEqualTo(statements(ask, one))
          .isPositive();
    }
  }

  @Test
  void nobody_asks_for_a_metric_that_is_not_there() {
    assertThat(evidence.evidence(new Ask("container.lost", null, null), Set.of(), AUTUMN))
        .isEqualTo(Map.of());
  }
}
