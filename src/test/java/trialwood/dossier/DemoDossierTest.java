package trialwood.dossier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.test.context.ActiveProfiles;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;

/** The dossiers of the (invented) demo nursery say what its scenario says. */
@SpringBootTest
@ActiveProfiles({"test", "demo"})
class DemoDossierTest {

  private static final LocalDate JULY = LocalDate.of(2025, 7, 20);
  private static final LocalDate NOVEMBER = LocalDate.of(2026, 11, 25);

  @Autowired Dossiers dossiers;
  @Autowired Accessions accessions;

  @Test
  void the_origin_is_told_from_parent_and_tag() {
    Origin origin = of("D18-02", NOVEMBER).origin();

    assertThat(origin.parents()).isEqualTo("seed parent DRIFT, open-pollinated");
    assertThat(origin.population()).isEqualTo("P18");
    assertThat(origin.inRow()).isEqualTo(26);
    assertThat(origin.position()).isEqualTo(58);
    assertThat(origin.taggedOn()).isEqualTo("2021-09-07");
    assertThat(origin.taggedBy()).isNotBlank();
    assertThat(origin.missing()).isEmpty();
    assertThat(origin.blanks()).isEmpty();
  }

  @Test
  void the_first_asexual_reproduction_is_the_first_batch_that_rooted() {
    FirstRooting first = of("D18-02", NOVEMBER).firstRooting();

    assertThat(first.run()).isEqualTo("R22");
    assertThat(first.stuckOn()).isEqualTo("2022-06-06");
    assertThat(first.countedOn()).isEqualTo("2022-07-04");
    assertThat(first.rooted()).isEqualTo(63);
    assertThat(first.stuck()).isEqualTo(72);
    assertThat(first.from()).isEqualTo("the original plant");
    assertThat(first.how()).contains("softwood tip cuttings", "90 mm", "K-IBA 2000 ppm");
  }

  @Test
  void a_second_and_better_run_does_not_move_the_first_reproduction() {
    FirstRooting first = of("A18-04", NOVEMBER).firstRooting();

    assertThat(first.run()).isEqualTo("R22");
    assertThat(first.rooted()).isEqualTo(54);
  }

  @Test
  void before_the_first_count_nothing_has_been_reproduced() {
    assertThat(of("D18-02", LocalDate.of(2022, 7, 3)).firstRooting()).isNull();
  }

  @Test
  void in_july_2025_the_flower_and_the_leaf_wait_to_be_measured() {
    Map<String, Described> lines = lines(of("D18-02", JULY));

    for (String trait : Set.of("FLDIAM", "FLCOL", "EYE", "LEAFLEN", "LEAFWID")) {
      Described line = lines.get(trait);
      assertThat(line.sample().n()).as(trait).isZero();
      assertThat(line.nextChance(JULY)).as(trait).isEqualTo(JULY);
      assertThat(line.lastChance(JULY)).as(trait).isEqualTo("2025-08-31");
    }
    assertThat(of("D18-02", JULY).known())
        .extracting(Descriptions.Known::code)
        .containsExactly("CK-1", "CMP-V", "CMP-W");
  }

  @Test
  void the_young_shoots_of_2025_are_missed_and_open_again_in_april() {
    Described shoots = lines(of("D18-02", JULY)).get("YSHOOT");

    assertThat(shoots.sample().n()).isEqualTo(3);
    assertThat(shoots.isMissed(JULY)).isTrue();
    assertThat(shoots.nextChance(JULY)).isEqualTo("2026-04-15");
  }

  @Test
  void a_plant_that_was_seen_in_two_springs_is_one_plant() {
    Sample shoots = lines(of("D18-02", NOVEMBER)).get("YSHOOT").sample();

    assertThat(shoots.seasons()).isEqualTo(2);
    assertThat(shoots.n()).isEqualTo(10);
    assertThat(shoots.words()).isEqualTo("175A 2015 (10)");
  }

  @Test
  void every_trait_stands_beside_the_variety_that_was_measured_on_the_same_day() {
    Map<String, Described> lines = lines(of("D18-02", NOVEMBER));

    for (String trait :
        Set.of("EYE", "FLCOL", "FLDIAM", "FLTYPE", "HABIT", "LEAFLEN", "LEAFWID", "PETIOLE")) {
      assertThat(lines.get(trait).beside())
          .as(trait)
          .singleElement()
          .satisfies(it -> assertThat(it.variety()).isEqualTo("CMP-V"))
          .satisfies(it -> assertThat(it.own().n()).isEqualTo(10))
          .satisfies(it -> assertThat(it.other().n()).isEqualTo(10))
          .satisfies(it -> assertThat(it.other().sites()).isEqualTo(it.own().sites()));
    }
    assertThat(lines.get("LEAFLEN").beside().get(0).own().mean()).isEqualTo(77.4);
    assertThat(lines.get("LEAFLEN").beside().get(0).other().mean()).isEqualTo(65.4);
    // by hand: squares 148.4 and 342.4 on 18 df, se 2.3352, t of 18 df 2.1009 from the tables
    assertThat(lines.get("LEAFLEN").beside().get(0).difference()).isEqualTo(12.0, within(1e-9));
    assertThat(lines.get("LEAFLEN").beside().get(0).interval())
        .satisfies(it -> assertThat(it.low()).isEqualTo(7.094, within(1e-3)))
        .satisfies(it -> assertThat(it.high()).isEqualTo(16.906, within(1e-3)));
    assertThat(lines.get("HEIGHT").beside().get(0))
        .satisfies(it -> assertThat(it.variety()).isEqualTo("CK-1"))
        .satisfies(it -> assertThat(it.own().seasons()).isOne())
        .satisfies(it -> assertThat(it.own().sites()).isEqualTo(it.other().sites()))
        .satisfies(it -> assertThat(it.own().from()).hasYear(2026));
  }

  @Test
  void the_village_sale_left_186_days_when_it_was_heard_of_and_was_met_with_44_to_spare() {
    LocalDate heard = LocalDate.of(2025, 10, 29);

    assertThat(patent(of("D18-02", heard)).standing(heard)).isEqualTo("186 days left");
    assertThat(patent(of("D18-02", NOVEMBER)).standing(NOVEMBER))
        .isEqualTo("filed with 44 days to spare");
  }

  private static RouteClock patent(Dossier dossier) {
    return dossier.clocks().stream()
        .filter(it -> it.route().code().equals("US-PP"))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, Described> lines(Dossier dossier) {
    return dossier.description().stream()
        .collect(Collectors.toMap(line -> line.trait().code(), Function.identity()));
  }

  private Dossier of(String code, LocalDate asOf) {
    Accession candidate = accessions.named(code).orElseThrow();
    return dossiers.of(candidate, asOf);
  }
}
