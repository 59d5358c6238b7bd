package trialwood.house;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import trialwood.house.HouseSprays.Closed;
import trialwood.testing.RecordTest;
import trialwood.web.Instead;

@RecordTest
@Import(HouseLog.class)
class HouseLogTest {

  @Autowired private HouseLog log;
  @Autowired private Houses houses;
  @Autowired private Clock clock;
  private House mistHouse;
  private Instant now;

  @BeforeEach
  void two_houses() {
    mistHouse = houses.save(new House("mist house", true, null));
    houses.save(new House("liner house", false, null));
    now = clock.instant().truncatedTo(ChronoUnit.MINUTES);
  }

  private HouseSpray sprayed(long hoursAgo, int interval, Instead instead) {
    NewSpray said =
        new NewSpray(
            now.minus(hoursAgo, ChronoUnit.HOURS), interval, "a product", null, "all", null, null);
    return log.spray(mistHouse, said, null, instead, null);
  }

  @Test
  void a_house_is_closed_until_the_last_interval_is_over() {
    sprayed(2, 4, null);
    sprayed(1, 12, null);
    assertThat(log.closed())
        .containsExactly(new Closed("mist house", now.plus(11, ChronoUnit.HOURS)));
  }

  @Test
  void a_house_is_open_when_the_interval_is_over() {
    sprayed(5, 4, null);
    assertThat(log.closed()).isEmpty();
  }

  @Test
  void a_corrected_interval_takes_the_place_of_the_wrong_one() {
    HouseSpray wrong = sprayed(2, 48, null);
    Instead instead = new Instead(Objects.requireNonNull(wrong.id()), "the label says 4");
    sprayed(2, 4, instead);
    assertThat(log.closed())
        .extracting(Closed::until)
        .containsExactly(now.plus(2, ChronoUnit.HOURS));
    assertThatThrownBy(() -> sprayed(2, 5, instead)).hasMessageContaining("corrected before");
  }

  @Test
  void a_place_lies_in_the_house_its_words_begin_with() {
    assertThat(mistHouse.holds("Mist house, benches 1 to 3")).isTrue();
    assertThat(mistHouse.holds("old mist house")).isFalse();
  }
}
