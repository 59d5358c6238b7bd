package trialwood.record;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one source of now. */
@Configuration(proxyBeanMethods = false)
class Time {

  @Bean
  Clock clock() {
    return new WholeMicroseconds(Clock.systemDefaultZone());
  }

  /**
   * Cuts instants to the microseconds that both databases keep. (The JDK's ticking clock divides by
   * zero when it is asked for milliseconds at so fine a tick.)
   */
  static final class WholeMicroseconds extends Clock {

    private final Clock source;

    WholeMicroseconds(Clock source) {
      this.source = source;
    }

    @Override
    public Instant instant() {
      return source.instant().truncatedTo(ChronoUnit.MICROS);
    }

    @Override
    public ZoneId getZone() {
      return source.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return new WholeMicroseconds(source.withZone(zone));
    }
  }
}
