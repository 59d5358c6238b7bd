package trialwood.season;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;
import trialwood.people.Secret;

/**
 * Slows down a program that fetches one calendar over and over: so many times within a quarter of
 * an hour. Kept in memory, for the calendars fetched last.
 */
@Component
public class FeedThrottle {

  public static final int FETCHES = 30;
  public static final Duration WITHIN = Duration.ofMinutes(15);
  private static final int CALENDARS = 1_000;

  private final Clock clock;
  private final Map<String, Deque<Instant>> fetched =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
          return size() > CALENDARS;
        }
      };

  FeedThrottle(Clock clock) {
    this.clock = clock;
  }

  /** Counts a fetch of a calendar that exists. */
  public synchronized boolean admits(Secret secret) {
    Deque<Instant> recent = fetched.computeIfAbsent(secret.digest(), none -> new ArrayDeque<>());
    Instant now = clock.instant();
    recent.removeIf(past -> !past.isAfter(now.minus(WITHIN)));
    if (recent.size() >= FETCHES) {
      return false;
    }
    recent.add(now);
    return true;
  }
}
