package trialwood.analysis.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.analysis.PlantingDensity;

/** The sums of the bench against what growers' tables and a calculator say. */
class BenchArithmeticTest {

  private static final double SQUARE_FEET_100 = 100 * 0.3048 * 0.3048;

  /** Common practice, no source. */
  @ParameterizedTest
  @CsvSource({"0.1, 1000", "0.3, 3000", "0.8, 8000", "1, 10000"})
  void a_percentage_is_ten_thousand_parts_per_million(double percent, double ppm) {
    assertThat(Strength.ofPercent(percent).ppm()).isEqualTo(ppm, within(1e-9));
    assertThat(Strength.ofMilligramsPerLitre(ppm).percent()).isEqualTo(percent, within(1e-12));
  }

  /** 203.24 and 241.33 g/mol, from memory. */
  @Test
  void a_thousand_ppm_of_the_potassium_salt_hold_842_ppm_of_the_acid() {
    assertThat(Strength.ofPpm(1_000).saltAsAcid().ppm()).isEqualTo(842.2, within(0.05));
    assertThat(Strength.ofPpm(842.16).acidAsSalt().ppm()).isEqualTo(1_000, within(0.01));
  }

  /** By calculation. */
  @Test
  void a_litre_of_3000_ppm_takes_300_ml_of_a_stock_of_10000() {
    Dilution dilution = Dilution.of(Strength.ofPpm(10_000), Strength.ofPercent(0.3), 1);
    assertThat(dilution.stockMl()).isEqualTo(300, within(1e-9));
    assertThat(dilution.waterMl()).isEqualTo(700, within(1e-9));
  }

  @Test
  void water_makes_no_stock_stronger() {
    assertThatThrownBy(() -> Dilution.of(Strength.ofPpm(1_000), Strength.ofPpm(1_001), 1))
        .hasMessage("Water only thins: what is wanted is stronger than the stock.");
    assertThat(Dilution.of(Strength.ofPpm(1_000), Strength.ofPpm(1_000), 1).waterMl()).isZero();
  }

  /** By calculation. */
  @Test
  void half_a_litre_of_3000_ppm_takes_one_and_a_half_grams() {
    WeighIn pure = WeighIn.of(Strength.ofPpm(3_000), 0.5, 1);
    WeighIn ninety = WeighIn.of(Strength.ofPpm(3_000), 0.5, 0.9);
    assertThat(pure.productGrams()).isEqualTo(1.5, within(1e-12));
    assertThat(ninety.pureGrams()).isEqualTo(1.5, within(1e-12));
    assertThat(ninety.productGrams()).isEqualTo(1.667, within(0.0005));
  }

  /** By calculation. */
  @Test
  void a_hundred_finished_plants_begin_with_135_cuttings_or_148_with_a_margin() {
    Start start = Start.with(100, List.of(0.85, 0.95, 0.97, 0.95), 0.10);
    assertThat(start.exact()).isEqualTo(134.4, within(0.05));
    assertThat(start.needed()).isEqualTo(135);
    assertThat(start.withMargin()).isEqualTo(148);
  }

  /** By calculation. */
  @Test
  void two_thousand_plants_begin_with_3281_seeds() {
    assertThat(Start.with(2_000, List.of(.713, .90, .95), 0).needed()).isEqualTo(3_281);
  }

  @Test
  void what_comes_out_even_is_not_rounded_up_by_a_slip_of_the_machine() {
    assertThat(Start.with(49, List.of(0.7, 0.7), 0).needed()).isEqualTo(100);
    assertThat(Start.with(100, List.of(1.0), 0.1).withMargin()).isEqualTo(110);
  }

  /** By calculation. */
  @Test
  void three_hundred_cuttings_fill_four_trays_of_72_and_twelve_cells_of_a_fifth() {
    assertThat(Trays.of(300, 72)).isEqualTo(new Trays(5, 12));
    assertThat(Trays.of(72, 24)).isEqualTo(new Trays(3, 24));
    assertThat(Trays.of(1, 72)).isEqualTo(new Trays(1, 1));
  }

  /** Makers' catalogues of plug trays give the litres of a tray beside its cells. */
  @ParameterizedTest
  @CsvSource({"50, 4.92, 98, 0.5", "24, 4.81, 200, 0.5", "128, 4.16, 32.5, 0.05"})
  void a_cell_takes_its_share_of_the_tray(int cells, double litres, double ml, double off) {
    assertThat(Medium.cellMl(litres, cells)).isEqualTo(ml, within(off));
  }

  /** By calculation; 2.8 L lies in the 2.7 to 2.9 L of pots that are sold as #1. */
  @Test
  void five_hundred_pots_of_2_8_litres_take_1_4_cubic_metres() {
    assertThat(Medium.litres(500, 2.8)).isEqualTo(1_400, within(1e-9));
  }

  /** 14,400 in² ÷ distance² on 100 ft², an extension table; staggered ÷ 0.866. */
  @Test
  void pots_on_a_hundred_square_feet() {
    assertThat(spacing(10).square(SQUARE_FEET_100)).isEqualTo(144, within(1e-9));
    assertThat(spacing(12).square(SQUARE_FEET_100)).isEqualTo(100, within(1e-9));
    assertThat(spacing(14).staggered(SQUARE_FEET_100)).isEqualTo(84.8, within(0.05));
  }

  private static PotSpacing spacing(double inches) {
    return new PotSpacing(Length.INCH.toMetres(inches));
  }

  /** By definition of the inch. */
  @ParameterizedTest
  @CsvSource({"24, 61.0", "14, 35.6"})
  void inches_in_centimetres(double inches, double cm) {
    assertThat(Length.CM.fromMetres(Length.INCH.toMetres(inches))).isEqualTo(cm, within(0.05));
  }

  /** 43,560 ft² to the acre, an extension table. */
  @ParameterizedTest
  @CsvSource({"3, 10, 1452", "3, 8, 1815", "1.5, 6, 4840", "2, 3, 7260", "6, 10, 726"})
  void plants_on_an_acre(double inRow, double between, double plants) {
    assertThat(PlantingDensity.feet(inRow, between).perAcre()).isEqualTo(plants, within(1e-6));
  }

  @Test
  void nothing_is_computed_from_nothing() {
    assertThatThrownBy(() -> Strength.ofPpm(0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Strength.ofPercent(101)).hasMessageContaining("100 %");
    assertThatThrownBy(() -> WeighIn.of(Strength.ofPpm(1), 1, 0)).hasMessageContaining("purity");
    assertThatThrownBy(() -> Start.with(10, List.of(0.0), 0)).hasMessageContaining("rate");
    assertThatThrownBy(() -> Trays.of(0, 24)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new PotSpacing(-1)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Medium.cellMl(4, 0)).hasMessageContaining("above 0");
  }
}
