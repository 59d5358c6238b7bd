package trialwood.dossier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BesideTest {

  private static final LocalDate DAY = LocalDate.of(2026, 8, 4);

  private static Sample of(int... values) {
    List<Seen> seen =
        IntStream.of(values).mapToObj(value -> seen(BigDecimal.valueOf(value), null)).toList();
    return Sample.of(seen);
  }

  private static Seen seen(@Nullable BigDecimal number, @Nullable String words) {
    UUID any = UUID.randomUUID();
    return new Seen(any, UUID.randomUUID(), any, "PLANT", null, DAY, number, words);
  }

  /** By hand: s² = (8 + 8)/4, se = 2√(2/3) = 1.6330; t of 4 df 2.7764 from the tables. */
  @Test
  void the_difference_is_candidate_minus_variety_with_limits_by_the_spread_of_both() {
    Beside beside = new Beside("CK-1", of(10, 12, 14), of(5, 7, 9), null);

    assertThat(beside.difference()).isEqualTo(5, within(1e-9));
    assertThat(beside.interval()).isNotNull();
    assertThat(beside.interval().low()).isEqualTo(5 - 2.7764 * 1.6330, within(1e-3));
    assertThat(beside.interval().high()).isEqualTo(5 + 2.7764 * 1.6330, within(1e-3));
    assertThat(beside.lacking()).isNull();
  }

  @Test
  void one_plant_of_either_gives_a_sentence_and_no_difference() {
    Beside beside = new Beside("CK-1", of(10, 12, 14), of(5), null);

    assertThat(beside.isMeasured()).isTrue();
    assertThat(beside.difference()).isNull();
    assertThat(beside.interval()).isNull();
    assertThat(beside.lacking()).isEqualTo("A difference needs at least two plants of each.");
  }

  @Test
  void plants_that_are_all_alike_have_no_spread_to_judge_by() {
    Beside beside = new Beside("CK-1", of(10, 10), of(5, 5), null);

    assertThat(beside.difference()).isNull();
    assertThat(beside.lacking()).startsWith("The plants of each are all alike");
  }

  @Test
  void colours_and_other_words_have_no_difference() {
    Sample words = Sample.of(List.of(seen(null, "175A 2015"), seen(null, "175A 2015")));

    assertThat(new Beside("CK-1", words, words, null).isMeasured()).isFalse();
    assertThat(new Beside("CK-1", words, words, null).difference()).isNull();
  }

  private static List<Seen> at(String site, int... values) {
    UUID any = UUID.randomUUID();
    return IntStream.of(values)
        .mapToObj(
            value ->
                new Seen(
                    any,
                    UUID.randomUUID(),
                    any,
                    "PLOT",
                    site,
                    DAY,
                    BigDecimal.valueOf(value),
                    null))
        .toList();
  }

  private static List<Seen> all(List<Seen> one, List<Seen> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  /** By hand: 4 at the hill, 2 on the flat; s = √2, se = 1; t of 1 df 12.706 from the tables. */
  @Test
  void over_two_sites_the_difference_is_taken_at_each_and_no_site_outweighs_the_other() {
    List<Seen> own = all(at("hill", 13, 15), at("flat", 42, 42, 42, 42, 42, 42));
    List<Seen> other = all(at("hill", 10, 10), at("flat", 39, 41));
    Beside beside = Beside.of("CK-1", own, other);

    assertThat(beside.difference()).isEqualTo(3, within(1e-9));
    assertThat(beside.interval()).isNotNull();
    assertThat(beside.interval().low()).isEqualTo(3 - 12.706, within(1e-3));
    assertThat(beside.manner()).isEqualTo("over 2 sites");
    assertThat(beside.lacking()).isNull();
  }

  @Test
  void at_one_site_the_plain_means_are_compared_and_the_page_can_say_so() {
    Beside beside = Beside.of("CK-1", at("hill", 10, 12, 14), at("hill", 5, 7, 9));

    assertThat(beside.difference()).isEqualTo(5, within(1e-9));
    assertThat(beside.interval().high()).isEqualTo(5 + 2.7764 * 1.6330, within(1e-3));
    assertThat(beside.manner()).isEqualTo("plain means");
  }

  @Test
  void sites_that_agree_to_the_last_digit_give_no_interval_of_nothing() {
    List<Seen> own = all(at("hill", 12, 14), at("flat", 22, 24));
    List<Seen> other = all(at("hill", 10, 12), at("flat", 20, 22));
    Beside beside = Beside.of("CK-1", own, other);

    assertThat(beside.manner()).isEqualTo("plain means");
    assertThat(beside.interval().high() - beside.interval().low()).isGreaterThan(1);
  }
}
