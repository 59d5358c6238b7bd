package trialwood.analysis.selection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.analysis.Answer;

class PedigreeTest {

  /** The tabular method: Emik and Terrill (1949), Journal of Heredity 40, 51–55. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void every_relationship_agrees_with_the_tabular_method(int seed) {
    List<Plant> plants = any(new Random(seed), 60);
    double[][] table = table(plants);
    var shuffled = new ArrayList<>(plants);
    Collections.shuffle(shuffled, new Random(seed));
    Pedigree pedigree = Pedigree.of(shuffled);
    for (int i = 0; i < plants.size(); i++) {
      String plant = plants.get(i).id();
      Relationships relationships = Relationships.of(pedigree, plant);
      assertThat(relationships.to(plant))
          .as("the diagonal is 1 + F")
          .isCloseTo(1 + pedigree.inbreeding(plant), within(1e-12));
      for (int j = 0; j < plants.size(); j++) {
        assertThat(relationships.to(plants.get(j).id())).isCloseTo(table[i][j], within(1e-12));
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void the_inverse_is_the_inverse(int seed) {
    List<Plant> plants = any(new Random(seed), 40);
    Pedigree pedigree = Pedigree.of(plants);
    InverseRelationships inverse = InverseRelationships.of(pedigree).value().orElseThrow();
    DMatrixRMaj a = new DMatrixRMaj(table(plants));
    DMatrixRMaj written = new DMatrixRMaj(40, 40);
    for (int i = 0; i < 40; i++) {
      for (int j = 0; j < 40; j++) {
        written.set(i, j, inverse.at(plants.get(i).id(), plants.get(j).id()));
      }
    }
    DMatrixRMaj product = new DMatrixRMaj(40, 40);
    CommonOps_DDRM.mult(a, written, product);
    for (int i = 0; i < 40; i++) {
      product.add(i, i, -1);
    }
    assertThat(CommonOps_DDRM.elementMaxAbs(product)).isLessThan(1e-9);
    assertThat(pedigree.logDeterminant().value().orElseThrow())
        .isCloseTo(Math.log(CommonOps_DDRM.det(a)), within(1e-8));
  }

  @Test
  void selfing_halves_what_is_left_to_lose() {
    Pedigree pedigree =
        Pedigree.of(
            List.of(
                Plant.founder("P"),
                Plant.selfed("S1", "P"),
                Plant.selfed("S2", "S1"),
                Plant.selfed("S3", "S2")));
    assertThat(pedigree.inbreeding("P")).isZero();
    assertThat(pedigree.inbreeding("S1")).isEqualTo(0.5);
    assertThat(pedigree.inbreeding("S2")).isEqualTo(0.75);
    assertThat(pedigree.inbreeding("S3")).isEqualTo(0.875);
  }

  @Test
  void a_hundred_selfings_leave_a_copy_and_no_inverse() {
    var plants = new ArrayList<Plant>();
    plants.add(Plant.founder("S0"));
    for (int i = 1; i <= 100; i++) {
      plants.add(Plant.selfed("S" + i, "S" + (i - 1)));
    }
    Pedigree pedigree = Pedigree.of(plants);
    assertThat(pedigree.inbreeding("S100")).isEqualTo(1);
    assertThat(pedigree.logDeterminant()).isInstanceOf(Answer.Lacking.class);
    assertThat(InverseRelationships.of(pedigree)).isInstanceOf(Answer.Lacking.class);
    assertThat(BreedingValues.of(pedigree, List.of(new PlantRecord("S0", Map.of(), 1)), 1, 1))
        .isInstanceOf(Answer.Lacking.class);
  }

  @Test
  void a_pedigree_that_cannot_be_true_is_refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pedigree.of(List.of(Plant.founder("A"), Plant.founder("A"))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pedigree.of(List.of(new Plant("A", "B", null))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pedigree.of(List.of(Plant.selfed("A", "A"))))
        .withMessage("A would be its own ancestor.");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> Pedigree.of(List.of(new Plant("A", "B", null), new Plant("B", null, "A"))));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Pedigree.of(List.of()).inbreeding("nobody"));
  }

  /** Parents from all plants before, or from the last few: shallow and deep pedigrees. */
  @ParameterizedTest
  @ValueSource(ints = {50_000, 20_000, 5_000})
  void fifty_thousand_accessions_take_little_time(int window) {
    var plants = new ArrayList<Plant>();
    Random random = new Random(7);
    for (int i = 0; i < 50_000; i++) {
      boolean founder = i < 500;
      int from = Math.max(0, i - window);
      plants.add(
          new Plant(
              "P" + i,
              founder ? null : "P" + (from + random.nextInt(i - from)),
              founder ? null : "P" + (from + random.nextInt(i - from))));
    }
    var threads = ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadCpuTime();
    Pedigree pedigree = Pedigree.of(plants);
    double seconds = (threads.getCurrentThreadCpuTime() - before) / 1e9;
    assertThat(seconds).isLessThan(4);
    assertThat(pedigree.inbreeding("P49999"))
        .isCloseTo(Relationships.of(pedigree, "P49999").to("P49999") - 1, within(1e-9));
  }

  @Test
  void a_large_pedigree_gives_the_same_values_as_its_inverse_would() {
    Random random = new Random(3);
    List<Plant> plants = any(random, 900);
    Pedigree pedigree = Pedigree.of(plants);
    List<PlantRecord> records = records(plants, random);
    BreedingValues inverted = BreedingValues.of(pedigree, records, 16, 25).value().orElseThrow();
    var more = new ArrayList<>(plants);
    for (int i = 0; i < 400; i++) {
      more.add(Plant.founder("unrelated " + i));
    }
    BreedingValues solved =
        BreedingValues.of(Pedigree.of(more), records, 16, 25).value().orElseThrow();
    for (Plant plant : plants) {
      assertThat(solved.of(plant.id()).value())
          .isCloseTo(inverted.of(plant.id()).value(), within(1e-6));
      assertThat(inverted.of(plant.id()).reliability().value().orElseThrow()).isBetween(-1e-9, 1.0);
    }
    assertThat(solved.of("P5").reliability()).isInstanceOf(Answer.Lacking.class);
    assertThat(solved.fixed().get("north")).isCloseTo(inverted.fixed().get("north"), within(1e-6));
  }

  @Test
  void effects_that_cannot_be_told_apart_are_an_answer() {
    Pedigree pedigree = Pedigree.of(List.of(Plant.founder("A"), Plant.founder("B")));
    List<PlantRecord> records =
        List.of(
            new PlantRecord("A", Map.of("mean", 1.0, "block 1", 1.0), 5),
            new PlantRecord("B", Map.of("mean", 1.0, "block 2", 1.0), 7));
    assertThat(BreedingValues.of(pedigree, records, 1, 1)).isInstanceOf(Answer.Lacking.class);
    assertThat(BreedingValues.of(pedigree, List.of(), 1, 1)).isInstanceOf(Answer.Lacking.class);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> BreedingValues.of(pedigree, records, 0, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                BreedingValues.of(pedigree, List.of(new PlantRecord("nobody", Map.of(), 1)), 1, 1));
  }

  private static List<PlantRecord> records(List<Plant> plants, Random random) {
    var records = new ArrayList<PlantRecord>();
    for (Plant plant : plants) {
      String site = random.nextBoolean() ? "north" : "south";
      records.add(new PlantRecord(plant.id(), Map.of(site, 1.0), 50 + 6 * random.nextGaussian()));
    }
    return records;
  }

  /** Parents before offspring; some unknown, some selfed. */
  private static List<Plant> any(Random random, int size) {
    var plants = new ArrayList<Plant>();
    for (int i = 0; i < size; i++) {
      String mother = parent(random, i);
      String father = random.nextInt(6) == 0 ? mother : parent(random, i);
      plants.add(new Plant("P" + i, mother, father));
    }
    return plants;
  }

  private static @Nullable String parent(Random random, int before) {
    return before == 0 || random.nextInt(4) == 0 ? null : "P" + random.nextInt(before);
  }

  private static double[][] table(List<Plant> plants) {
    List<String> ids = plants.stream().map(Plant::id).toList();
    double[][] a = new double[ids.size()][ids.size()];
    for (int i = 0; i < ids.size(); i++) {
      int mother = ids.indexOf(plants.get(i).mother());
      int father = ids.indexOf(plants.get(i).father());
      for (int j = 0; j < i; j++) {
        double related = (mother < 0 ? 0 : a[mother][j]) / 2 + (father < 0 ? 0 : a[father][j]) / 2;
        a[i][j] = related;
        a[j][i] = related;
      }
      a[i][i] = 1 + (mother < 0 || father < 0 ? 0 : a[mother][father] / 2);
    }
    return a;
  }
}
