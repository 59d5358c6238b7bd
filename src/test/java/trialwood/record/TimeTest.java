package trialwood.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class TimeTest {

  @Test
  void now_is_cut_to_what_both_databases_keep() {
    Instant fine = Instant.parse("2022-06-06T08:15:30.123456789Z");
    Clock clock = new Time.WholeMicroseconds(Clock.fixed(fine, ZoneOffset.UTC));
    assertThat(clock.instant()).isEqualTo(Instant.parse("2022-06-06T08:15:30.123456Z"));
    assertThat(clock.millis()).isEqualTo(fine.toEpochMilli());
  }
}
