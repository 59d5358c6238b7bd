package trialwood.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.record.Recorded;

class HouseSprayTest {

  private static final UUID HOUSE = new UUID(1, 1);
  private static final Instant NOON = Instant.parse("2026-07-22T12:00:00Z");

  private static NewSpray sprayed(Instant ended, int hours) {
    return new NewSpray(ended, hours, "a fungicide", null, "the whole house", null, null);
  }

  private static HouseSpray stored(NewSpray said) {
    return new HouseSpray(HOUSE, said, null, new Recorded(null, "bench", NOON));
  }

  @Test
  void nobody_goes_in_before_the_interval_on_the_label_is_over() {
    assertThat(stored(sprayed(NOON.minusSeconds(3600), 12)).reEntryAt())
        .isEqualTo(Instant.parse("2026-07-22T23:00:00Z"));
  }

  @Test
  void a_spray_that_is_still_to_come_is_refused() {
    assertThatThrownBy(() -> stored(sprayed(NOON.plusSeconds(60), 4)))
        .hasMessageContaining("still to come");
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 337, 99_999})
  void an_interval_that_no_label_gives_is_refused(int hours) {
    assertThatThrownBy(() -> stored(sprayed(NOON, hours))).hasMessageContaining("0 to 336 hours");
  }

  @Test
  void no_waiting_at_all_is_asked_about() {
    assertThat(HouseSpray.questions(sprayed(NOON, 0))).hasSize(1);
    assertThat(HouseSpray.questions(sprayed(NOON, 4))).isEmpty();
  }

  @Test
  void product_and_area_must_be_said() {
    NewSpray said = new NewSpray(NOON, 4, " ", null, "", null, null);
    assertThatThrownBy(() -> stored(said))
        .hasMessageContaining("as on its label")
        .hasMessageContaining("what was treated");
  }
}
