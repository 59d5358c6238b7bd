package trialwood.record;

import java.time.Clock;
import java.time.Duration;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one source of now, cut to the microseconds that both databases keep. */
@Configuration(proxyBeanMethods = false)
class Time {

  @Bean
  Clock clock() {
    return Clock.tick(Clock.systemDefaultZone(), Duration.ofNanos(1_000));
  }
}
