package trialwood.record;

import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;
import org.springframework.stereotype.Component;

/** Signs records with the account that is signed in and the one clock. */
@Component
public class Recorder {

  /** The account of work that nobody signed in for: first start, scheduled work. */
  static final String TOOL = "trialwood";

  private final Clock clock;

  Recorder(Clock clock) {
    this.clock = clock;
  }

  /** A signature for now, in the name of the person picked on the form, if any. */
  public Recorded by(@Nullable UUID personId) {
    return new Recorded(personId, account(), clock.instant());
  }

  static String account() {
    return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
        .map(Authentication::getName)
        .orElse(TOOL);
  }
}
