package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class ListQueryTest {

  private final ListQuery query =
      ListQuery.of(
          Map.of("q", " C18 ", "stage", "trial", "sort", "-height", "page", "3", "_csrf", "x"),
          "stage",
          "crop");

  @Test
  void a_query_reads_itself_from_the_address() {
    assertThat(query.text()).isEqualTo("C18");
    assertThat(query.filters()).containsExactly(Map.entry("stage", "trial"));
    assertThat(query.sort()).isEqualTo("height");
    assertThat(query.descending()).isTrue();
    assertThat(query.page()).isEqualTo(3);
    assertThat(query.size()).isEqualTo(ListQuery.USUAL_SIZE);
  }

  @Test
  void it_writes_itself_back_and_reads_the_same_again() {
    assertThat(query).hasToString("q=C18&stage=trial&sort=-height&page=3");
  }

  @Test
  void what_is_as_usual_is_left_out() {
    assertThat(ListQuery.of(Map.of())).hasToString("");
  }

  @Test
  void another_page_keeps_the_rest() {
    assertThat(query.withPage(4)).hasToString("q=C18&stage=trial&sort=-height&page=4");
  }

  @Test
  void sorting_by_the_same_column_turns_the_order_and_starts_at_the_first_page() {
    assertThat(query.sortedBy("height")).hasToString("q=C18&stage=trial&sort=height");
    assertThat(query.sortedBy("height").sortedBy("height").descending()).isTrue();
    assertThat(query.sortedBy("code").descending()).isFalse();
  }

  @Test
  void a_filter_is_set_and_taken_away() {
    assertThat(query.with("crop", "althea"))
        .hasToString("q=C18&crop=althea&stage=trial&sort=-height");
    assertThat(query.with("stage", "").filters()).isEmpty();
  }

  @Test
  void text_is_encoded() {
    assertThat(ListQuery.of(Map.of("q", "a&b=ü \"<"))).hasToString("q=a%26b%3D%C3%BC+%22%3C");
  }

  @Test
  void nonsense_in_the_address_is_left_out() {
    ListQuery odd = ListQuery.of(Map.of("page", "-7", "size", "1e9", "sort", "-"));
    assertThat(odd.page()).isEqualTo(1);
    assertThat(odd.size()).isEqualTo(ListQuery.USUAL_SIZE);
    assertThat(ListQuery.of(Map.of("size", "999999", "page", "999999999")).offset())
        .isEqualTo(999_999L * 500);
  }

  @Test
  void the_rows_shown_are_numbered() {
    assertThat(query.offset()).isEqualTo(100);
    assertThat(query.first(120)).isEqualTo(101);
    assertThat(query.last(120)).isEqualTo(120);
    assertThat(query.pages(120)).isEqualTo(3);
    assertThat(query.pages(0)).isEqualTo(1);
    assertThat(query.first(10)).isZero();
    assertThat(query.last(10)).isZero();
  }

  @Test
  void only_known_columns_reach_the_database() {
    Map<String, String> columns = Map.of("height", "max_height");
    assertThat(query.orderBy(columns, "code")).isEqualTo("max_height desc nulls last, code");
    assertThat(ListQuery.of(Map.of("sort", "1;drop table x")).orderBy(columns, "code"))
        .isEqualTo("code");
  }
}
