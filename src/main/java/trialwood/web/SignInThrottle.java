package trialwood.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/**
 * Slows down whoever guesses passwords: after five failed tries for one name within a quarter of an
 * hour the name has to wait. Kept in memory, for the names tried last.
 */
@Component
class SignInThrottle {

  static final int TRIES = 5;
  static final Duration WITHIN = Duration.ofMinutes(15);
  private static final int NAMES = 10_000;

  private final Clock clock;
  private final Map<String, Deque<Instant>> tries =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
          return size() > NAMES;
        }
      };

  SignInThrottle(Clock clock) {
    this.clock = clock;
  }

  /** Counts a try before its password is looked at, so that tries at once count as well. */
  synchronized boolean admits(String name) {
    Deque<Instant> recent = tries.computeIfAbsent(key(name), none -> new ArrayDeque<>());
    Instant now = clock.instant();
    recent.removeIf(past -> !past.isAfter(now.minus(WITHIN)));
    if (recent.size() >= TRIES) {
      return false;
    }
    recent.add(now);
    return true;
  }

  /** The password was right: earlier tries are forgotten. */
  synchronized void forget(String name) {
    tries.remove(key(name));
  }

  /** No user name is longer than sixty letters. */
  private static String key(String name) {
    return name.substring(0, Math.min(60, name.length()));
  }
}
