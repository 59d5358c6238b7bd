package trialwood.container.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.test.util.ReflectionTestUtils;
import trialwood.container.web.GrowthTable.Line;
import trialwood.container.web.PlantBook.Measured;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;

class GrowthTableTest {

  private static final LocalDate FIRST = LocalDate.of(2022, 9, 1);
  private static final LocalDate FOUR_WEEKS_ON = LocalDate.of(2022, 9, 29);

  private final UUID lot = UUID.randomUUID();
  private final UUID check = UUID.randomUUID();
  private final Map<UUID, String> lots = new LinkedHashMap<>();
  private final List<UUID> plants =
      List.of(UUID.randomUUID(), UUID.randomUUID(), UUID.randomUUID());
  private final List<UUID> checkPlants = List.of(UUID.randomUUID(), UUID.randomUUID());
  private final Trait height = trait("HEIGHT", TraitKind.MEASUREMENT, "cm", "whole plant");
  private final List<Measured> measured = new ArrayList<>();

  GrowthTableTest() {
    lots.put(lot, "22-C18-03-G1");
    lots.put(check, "22-CK-1-G1");
  }

  private static Trait trait(
      String code, TraitKind kind, @Nullable String unit, @Nullable String part) {
    Set<String> plant = Set.of("plant");
    Trait trait =
        new Trait(
            UUID.randomUUID(),
            code,
            code,
            kind,
            unit,
            null,
            null,
            0,
            Better.NEITHER,
            null,
            null,
            plant,
            part,
            false);
    ReflectionTestUtils.setField(trait, "id", UUID.randomUUID());
    return trait;
  }

  private void seen(UUID inLot, List<UUID> on, Trait trait, LocalDate day, int... values) {
    for (int i = 0; i < values.length; i++) {
      measured.add(
          new Measured(inLot, on.get(i), trait.id(), day, BigDecimal.valueOf(values[i]), true));
    }
  }

  private List<Line> lines(Trait... traits) {
    return GrowthTable.of(lots, measured, List.of(traits)).lines();
  }

  /** By hand: 8, 4 and 12 cm in four weeks; t of 2 degrees of freedom 4.3027 from the tables. */
  @Test
  void the_gain_a_week_is_taken_plant_by_plant_and_its_interval_over_plants() {
    seen(lot, plants, height, FIRST, 61, 58, 66);
    seen(lot, plants, height, FOUR_WEEKS_ON, 69, 62, 78);

    Line line = lines(height).get(0);

    assertThat(line.perWeek().mean()).isEqualTo(2, within(1e-9));
    assertThat(line.interval().low()).isEqualTo(2 - 4.3027 / Math.sqrt(3), within(1e-4));
    assertThat(line.interval().high()).isEqualTo(2 + 4.3027 / Math.sqrt(3), within(1e-4));
    assertThat(line.cv()).isEqualTo(Math.sqrt(193.0 / 3) / (209.0 / 3), within(1e-9));
    assertThat(line.perWeek().n()).isEqualTo(3);
    assertThat(line.from()).isEqualTo(FIRST);
    assertThat(line.until()).isEqualTo(FOUR_WEEKS_ON);
  }

  @Test
  void the_check_stands_under_the_lot() {
    seen(check, checkPlants, height, FIRST, 50, 52);
    seen(check, checkPlants, height, FOUR_WEEKS_ON, 54, 60);
    seen(lot, plants, height, FIRST, 61, 58);
    seen(lot, plants, height, FOUR_WEEKS_ON, 69, 62);

    assertThat(lines(height)).extracting(Line::lot).containsExactly("22-C18-03-G1", "22-CK-1-G1");
    assertThat(lines(height)).extracting(Line::own).containsExactly(true, false);
    assertThat(lines(height).get(1).perWeek().mean()).isEqualTo(1.5, within(1e-9));
  }

  @Test
  void a_plant_that_was_measured_once_is_no_part_of_it() {
    seen(lot, plants, height, FIRST, 61, 58, 66);
    seen(lot, plants, height, FOUR_WEEKS_ON, 69);

    Line line = lines(height).get(0);

    assertThat(line.perWeek().n()).isEqualTo(1);
    assertThat(line.interval()).isNull();
    assertThat(line.noInterval()).isEqualTo("An interval of the mean needs at least two plants.");
    assertThat(line.noCv()).isEqualTo("The spread needs at least two plants.");
  }

  @Test
  void a_plant_that_was_not_measured_since_it_came_says_nothing_of_the_lot() {
    UUID plant = plants.get(0);
    UUID trait = height.id();
    measured.add(new Measured(lot, plant, trait, FIRST, BigDecimal.TEN, false));
    measured.add(new Measured(lot, plant, trait, FOUR_WEEKS_ON, BigDecimal.TEN, false));

    assertThat(lines(height)).isEmpty();
  }

  @Test
  void a_check_alone_shows_no_table() {
    seen(check, checkPlants, height, FIRST, 50, 52);
    seen(check, checkPlants, height, FOUR_WEEKS_ON, 54, 60);

    assertThat(lines(height)).isEmpty();
  }

  @Test
  void scores_shares_and_flowers_do_not_grow() {
    Trait vigour = trait("VIGOUR", TraitKind.SCORE, null, "whole plant");
    Trait spot = trait("LEAFSPOT", TraitKind.MEASUREMENT, "%", null);
    Trait flower = trait("FLDIAM", TraitKind.MEASUREMENT, "mm", "open flower");
    for (Trait trait : List.of(vigour, spot, flower)) {
      seen(lot, plants, trait, FIRST, 3, 4, 5);
      seen(lot, plants, trait, FOUR_WEEKS_ON, 4, 5, 5);
    }

    assertThat(lines(vigour, spot, flower)).isEmpty();
  }
}
