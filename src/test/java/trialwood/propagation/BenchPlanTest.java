package trialwood.propagation;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.lineage.Accession;
import trialwood.lineage.AccessionKind;
import trialwood.lineage.Parentage;
import trialwood.site.Bench;

class BenchPlanTest {

  private static final UUID RUN = new UUID(0, 1);
  private static final UUID CROP = new UUID(0, 2);

  private static List<Accession> entries(String... codes) {
    return Stream.of(codes).map(BenchPlanTest::accession).toList();
  }

  private static Accession accession(String code) {
    return new Accession(CROP, code, AccessionKind.CULTIVAR, Parentage.unknown(), null) {
      @Override
      public @Nullable UUID id() {
        return UUID.nameUUIDFromBytes(code.getBytes());
      }
    };
  }

  private static List<Bench> benches(String... codes) {
    return Stream.of(codes).map(code -> new Bench(code, code, null, 40, null)).toList();
  }

  private static List<PlannedPlace> draw(List<Accession> entries, List<Bench> benches, long seed) {
    return BenchPlanning.drawn(RUN, new NewPlan(entries, 3, benches, 4, seed));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 42, 999_999})
  void the_check_and_every_candidate_stand_once_in_every_block(long seed) {
    List<Accession> entries = entries("CK-B", "C18-03", "C18-04", "D18-02");
    draw(entries, benches("M1"), seed).stream()
        .collect(groupingBy(PlannedPlace::block))
        .values()
        .forEach(
            block ->
                assertThat(block)
                    .extracting(PlannedPlace::accessionId)
                    .containsExactlyInAnyOrderElementsOf(
                        entries.stream().map(Accession::id).toList()));
  }

  @Test
  void on_one_bench_the_places_run_on_from_block_to_block() {
    assertThat(draw(entries("CK-B", "C18-03"), benches("M1"), 7))
        .extracting(PlannedPlace::place)
        .containsExactly(4, 5, 6, 7, 8, 9);
  }

  @Test
  void with_a_bench_for_each_block_they_begin_anew() {
    assertThat(draw(entries("CK-B", "C18-03"), benches("M1", "M2", "M3"), 7))
        .extracting(PlannedPlace::place)
        .containsExactly(4, 5, 4, 5, 4, 5);
  }

  @Test
  void one_that_is_stuck_in_two_ways_has_two_places_in_each_block() {
    assertThat(draw(entries("CK-B", "C18-03", "C18-03"), benches("M1"), 7).stream())
        .filteredOn(place -> place.accessionId().equals(accession("C18-03").id()))
        .extracting(PlannedPlace::block, PlannedPlace::nth)
        .containsExactlyInAnyOrder(
            tuple(1, 1), tuple(1, 2), tuple(2, 1), tuple(2, 2), tuple(3, 1), tuple(3, 2));
  }

  /** The demo nursery's plan of 2021 is what its seed draws: check first, then by code. */
  @Test
  void the_demo_s_plan_can_be_drawn_again() throws IOException {
    List<Accession> entries = entries("CK-B", "A18-01", "A18-02", "B18-01", "C18-01");
    NewPlan plan = new NewPlan(entries, 3, benches("M1", "M2", "M3"), 1, 2_906_179);
    List<String> drawn =
        BenchPlanning.drawn(RUN, plan).stream()
            .map(
                place ->
                    "R21,%d,%d,%s,1,2906179"
                        .formatted(place.block(), place.place(), code(entries, place)))
            .toList();
    assertThat(Files.readAllLines(Path.of("demo-data", "39-bench-plans.csv")).subList(1, 16))
        .isEqualTo(drawn);
  }

  private static String code(List<Accession> entries, PlannedPlace place) {
    return entries.stream()
        .filter(entry -> place.accessionId().equals(entry.id()))
        .findFirst()
        .orElseThrow()
        .code();
  }
}
