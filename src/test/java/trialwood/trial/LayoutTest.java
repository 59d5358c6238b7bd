package trialwood.trial;

import static java.util.stream.Collectors.groupingBy;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trialwood.trial.Layout.Place;

class LayoutTest {

  @ParameterizedTest
  @CsvSource({"2, 1, 7", "8, 4, 20240408", "12, 3, 1", "13, 3, 1", "40, 5, -3"})
  void every_entry_stands_once_in_every_block(int entries, int blocks, long seed) {
    List<Integer> all = IntStream.range(0, entries).boxed().toList();
    for (Layout field : Layout.draw(3, entries, blocks, seed)) {
      assertThat(field.places().stream().collect(groupingBy(Place::block)).values())
          .hasSize(blocks)
          .allSatisfy(
              block ->
                  assertThat(block.stream().map(Place::entry))
                      .containsExactlyInAnyOrderElementsOf(all));
    }
  }

  @ParameterizedTest
  @CsvSource({"8, 4", "13, 3", "25, 2"})
  void the_walk_is_a_serpentine_and_no_two_plots_share_a_place(int entries, int blocks) {
    List<Place> walk = Layout.draw(1, entries, blocks, 5).get(0).places();
    assertThat(new HashSet<>(walk.stream().map(p -> List.of(p.row(), p.column())).toList()))
        .hasSize(entries * blocks);
    for (int i = 1; i < walk.size(); i++) {
      Place before = walk.get(i - 1);
      Place now = walk.get(i);
      if (now.row() == before.row()) {
        assertThat(now.column() - before.column()).isEqualTo(now.row() % 2 == 1 ? 1 : -1);
      } else {
        assertThat(now.row()).isEqualTo(before.row() + 1);
      }
    }
  }

  @Test
  void the_same_seed_draws_the_same_field_and_each_site_another_one() {
    assertThat(Layout.draw(3, 8, 4, 20240408)).isEqualTo(Layout.draw(3, 8, 4, 20240408));
    assertThat(Layout.draw(3, 8, 4, 20240408)).doesNotHaveDuplicates();
    assertThat(Layout.draw(1, 8, 4, 20240408)).isNotEqualTo(Layout.draw(1, 8, 4, 20240409));
  }

  @Test
  void a_printed_layout_can_be_drawn_again_years_later() {
    assertThat(Layout.draw(1, 5, 1, 42).get(0).places().stream().map(Place::entry))
        .containsExactly(1, 2, 3, 4, 0);
  }

  @Test
  void no_entries_make_no_layout() {
    assertThatThrownBy(() -> Layout.draw(1, 0, 4, 1)).isInstanceOf(IllegalArgumentException.class);
  }
}
