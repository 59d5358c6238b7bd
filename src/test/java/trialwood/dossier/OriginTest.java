package trialwood.dossier;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What is told of where a candidate comes from, and what is left blank. */
class OriginTest {

  @Test
  void a_seedling_of_a_known_cross_leaves_nothing_blank() {
    Origin cross = origin("ALDER", "BRINE", "CROSS", null);

    assertThat(cross.parents()).isEqualTo("seed parent ALDER, pollen parent BRINE");
    assertThat(cross.blanks()).isEmpty();
    assertThat(cross.missing()).isEmpty();
  }

  @Test
  void an_open_pollinated_seedling_lacks_nothing() {
    Origin open = origin("DRIFT", null, "OPEN", null);

    assertThat(open.parents()).isEqualTo("seed parent DRIFT, open-pollinated");
    assertThat(open.blanks()).isEmpty();
  }

  @Test
  void an_unknown_pollen_parent_is_a_blank_and_no_lack() {
    Origin unknown = origin("DRIFT", null, "UNKNOWN", null);

    assertThat(unknown.parents()).isEqualTo("seed parent DRIFT");
    assertThat(unknown.blanks()).containsExactly("pollen parent");
    assertThat(unknown.missing()).isEmpty();
  }

  @Test
  void a_sport_is_told_by_its_origin_in_words() {
    Origin sport = origin(null, null, null, "Sport of CK-1, one branch in bed 3");

    assertThat(sport.parents()).isEmpty();
    assertThat(sport.blanks()).containsExactly("seed parent", "pollen parent");
    assertThat(sport.missing()).isEmpty();
  }

  @Test
  void where_neither_parent_nor_words_are_known_the_origin_is_not_told() {
    assertThat(origin(null, null, null, null).missing())
        .containsExactly("Neither a seed parent nor the origin in words is recorded.");
  }

  private static Origin origin(
      @Nullable String mother,
      @Nullable String father,
      @Nullable String pollination,
      @Nullable String inWords) {
    return new Origin(
        UUID.randomUUID(),
        "A-1",
        null,
        "Hibiscus syriacus",
        mother,
        father,
        pollination,
        inWords,
        "P18",
        "Cohort 18",
        "Home Block",
        LocalDate.of(2018, 5, 18),
        1,
        2,
        LocalDate.of(2021, 9, 7),
        "Runa Aldery",
        "clean leaf");
  }
}
