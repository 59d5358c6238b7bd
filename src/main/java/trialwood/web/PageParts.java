package trialwood.web;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The beans that templates name. */
@Configuration(proxyBeanMethods = false)
class PageParts {

  /** Instants are shown by the wall clock of the machine, which stands where the nursery stands. */
  @Bean
  Measures measures(Clock clock) {
    return new Measures(clock.getZone());
  }
}
