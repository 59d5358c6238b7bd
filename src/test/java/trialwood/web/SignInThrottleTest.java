package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class SignInThrottleTest {

  private final MovingClock clock = new MovingClock();
  private final SignInThrottle throttle = new SignInThrottle(clock);

  @Test
  void a_sixth_try_within_a_quarter_of_an_hour_has_to_wait() {
    tryOften("breeder", 5);

    assertThat(throttle.admits("breeder")).isFalse();
    assertThat(throttle.admits("bench")).isTrue();
  }

  @Test
  void after_a_quarter_of_an_hour_the_name_may_try_again() {
    tryOften("breeder", 5);
    clock.pass(Duration.ofMinutes(15).minusSeconds(1));
    assertThat(throttle.admits("breeder")).isFalse();

    clock.pass(Duration.ofSeconds(1));

    assertThat(throttle.admits("breeder")).isTrue();
  }

  @Test
  void the_right_password_wipes_the_slate() {
    tryOften("breeder", 4);
    throttle.forget("breeder");

    tryOften("breeder", 5);

    assertThat(throttle.admits("breeder")).isFalse();
  }

  @Test
  void a_name_that_no_account_can_have_is_counted_by_its_beginning() {
    tryOften("x".repeat(200), 5);

    assertThat(throttle.admits("x".repeat(100))).isFalse();
  }

  private void tryOften(String name, int times) {
    for (int n = 0; n < times; n++) {
      assertThat(throttle.admits(name)).as("try %d", n + 1).isTrue();
    }
  }

  private static class MovingClock extends Clock {

    private Instant now = Instant.parse("2026-05-14T06:00:00Z");

    void pass(Duration time) {
      now = now.plus(time);
    }

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return Clock.fixed(now, zone);
    }
  }
}
