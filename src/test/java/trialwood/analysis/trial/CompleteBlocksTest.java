package trialwood.analysis.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CompleteBlocksTest {

  private static List<List<Integer>> draw(int entries, int blocks, long seed) {
    return CompleteBlocks.draw(entries, blocks, new Random(seed));
  }

  @ParameterizedTest
  @CsvSource({"1, 1, 1", "3, 3, 2026", "13, 3, 20220606", "60, 20, -7"})
  void every_block_holds_every_entry_once(int entries, int blocks, long seed) {
    List<Integer> all = IntStream.range(0, entries).boxed().toList();
    assertThat(draw(entries, blocks, seed))
        .hasSize(blocks)
        .allSatisfy(block -> assertThat(block).containsExactlyInAnyOrderElementsOf(all));
  }

  @Test
  void the_same_seed_draws_the_same_blocks_and_another_seed_others() {
    assertThat(draw(13, 3, 5)).isEqualTo(draw(13, 3, 5)).isNotEqualTo(draw(13, 3, 6));
  }

  @Test
  void the_blocks_of_one_plan_are_drawn_apart() {
    assertThat(new HashSet<>(draw(13, 3, 5))).hasSize(3);
  }

  /** Each of 6 orders of 3 entries about 1,000 times in 6,000: within 4.5 standard deviations. */
  @Test
  void every_order_is_drawn_about_as_often() {
    int[] drawn = new int[27];
    for (int seed = 0; seed < 6_000; seed++) {
      List<Integer> order = draw(3, 1, seed * 7919L).get(0);
      drawn[9 * order.get(0) + 3 * order.get(1) + order.get(2)]++;
    }
    assertThat(IntStream.of(drawn).filter(times -> times > 0).boxed().toList())
        .hasSize(6)
        .allSatisfy(times -> assertThat(times).isBetween(870, 1_130));
  }

  @Test
  void nothing_is_drawn_from_nothing() {
    assertThatThrownBy(() -> draw(0, 3, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> draw(3, 0, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
