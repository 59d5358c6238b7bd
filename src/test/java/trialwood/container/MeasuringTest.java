package trialwood.container;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trialwood.container.Nursery.AUTUMN;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import trialwood.crop.Trait;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Problem;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;

@ContainerTest
class MeasuringTest {

  @Autowired Nursery nursery;
  @Autowired Measuring measuring;
  @Autowired Observations observations;
  @Autowired Doubts doubts;

  private Trait height;
  private List<UUID> plants;

  @BeforeEach
  void three_plants_of_61_cm() {
    height = nursery.height();
    UUID lot = nursery.lot("22-C18-03-G1", "C18-03", 20);
    plants = nursery.numbered(lot, "22-C18-03-G1", 3);
    nursery.measured(plants, height, LocalDate.of(2022, 9, 1), 61, 61, 61);
  }

  private PlantValues line(int plant, String value, String checked) {
    Reading reading = Reading.of(new BigDecimal(value));
    return new PlantValues(plants.get(plant), Map.of(height.id(), reading), checked);
  }

  @Test
  void a_line_with_something_wrong_holds_up_no_other() {
    Map<UUID, List<Problem>> wrong =
        measuring.keep(
            List.of(line(0, "64", null), line(1, "6400", null), line(2, "66", null)), AUTUMN, null);

    assertThat(wrong).containsOnlyKeys(plants.get(1));
    assertThat(wrong.get(plants.get(1)))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.field()).isEqualTo("HEIGHT");
              assertThat(problem.sentence()).contains("0 to 600 cm", "6400");
            });
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0))).hasSize(2);
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(1))).hasSize(1);
  }

  @Test
  void inches_in_a_box_for_centimetres_are_asked_about_and_not_stored() {
    Map<UUID, List<Problem>> wrong = measuring.keep(List.of(line(0, "24", null)), AUTUMN, null);

    assertThat(wrong.get(plants.get(0)).get(0).sentence()).startsWith("24 in = 61 cm?");
    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0))).hasSize(1);
  }

  @Test
  void a_value_that_was_checked_is_stored_with_what_was_found() {
    assertThat(measuring.keep(List.of(line(0, "24", "broken by wind")), AUTUMN, null)).isEmpty();

    assertThat(observations.findByUnitIdOrderByOnDate(plants.get(0)))
        .last()
        .extracting(Observation::note)
        .isEqualTo("broken by wind");
    assertThat(doubts.findByUnitIdOrderByOnDate(plants.get(0)))
        .extracting(Doubt::answer)
        .containsExactly("broken by wind");
  }

  @Test
  void the_same_plant_is_not_measured_twice_on_a_day() {
    measuring.keep(List.of(line(0, "64", null)), AUTUMN, null);

    assertThat(measuring.keep(List.of(line(0, "65", null)), AUTUMN, null).get(plants.get(0)))
        .extracting(Problem::sentence)
        .containsExactly("Plant height of this plant is on record for 12\u00a0Oct\u00a02022.");
  }

  @Test
  void plants_of_one_clone_that_spread_by_more_than_30_percent_are_looked_at_again() {
    List<UUID> more = nursery.numbered(nursery.lot("L2", "C18-04", 20), "L2", 5);
    List<PlantValues> even = sheet(more, "60", "62", "58", "61", "59");
    List<PlantValues> wide = sheet(more, "60", "62", "24", "61", "23");

    assertThat(measuring.questions(even)).isEmpty();
    assertThat(measuring.questions(wide))
        .singleElement()
        .satisfies(asked -> assertThat(asked.sentence()).contains("45 %", "5 plants"));
  }

  private List<PlantValues> sheet(List<UUID> measured, String... values) {
    return IntStream.range(0, values.length)
        .mapToObj(
            at ->
                new PlantValues(
                    measured.get(at),
                    Map.of(height.id(), Reading.of(new BigDecimal(values[at]))),
                    null))
        .toList();
  }

  @Test
  void nobody_measures_tomorrow() {
    assertThatThrownBy(
            () -> measuring.keep(List.of(line(0, "64", null)), LocalDate.now().plusDays(2), null))
        .hasMessageContaining("lies ahead");
  }
}
