package trialwood.exchange;

import static java.util.Comparator.comparing;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;

/**
 * Keeps the file that somebody last had checked, in memory and for a while, so that what is taken
 * in is what was checked. Each account has one, and nobody else's.
 */
@Component
public class CheckedFiles {

  /** How long a file waits to be taken in. */
  public static final Duration KEPT = Duration.ofMinutes(30);

  /** So that many accounts cannot fill the memory; the oldest file makes room. */
  private static final int MOST = 10;

  /**
   * A file as it was sent.
   *
   * @param ticket names it on the page that shows what the check said
   */
  public record CheckedFile(UUID ticket, String sheet, String name, byte[] bytes, Instant since) {}

  private final Map<String, CheckedFile> ofAccount = new ConcurrentHashMap<>();
  private final Clock clock;

  CheckedFiles(Clock clock) {
    this.clock = clock;
  }

  /** Keeps the file in place of the account's last one. */
  public synchronized CheckedFile keep(String account, String sheet, String name, byte[] bytes) {
    forgetTheOld();
    ofAccount.remove(account);
    if (ofAccount.size() >= MOST) {
      ofAccount.values().remove(oldest());
    }
    CheckedFile file = new CheckedFile(UUID.randomUUID(), sheet, name, bytes, clock.instant());
    ofAccount.put(account, file);
    return file;
  }

  /** The account's file, unless it is another than the page showed, or has waited too long. */
  public Optional<CheckedFile> find(String account, UUID ticket) {
    forgetTheOld();
    return Optional.ofNullable(ofAccount.get(account)).filter(file -> file.ticket().equals(ticket));
  }

  /** Lets go of what was taken in. */
  public void forget(String account) {
    ofAccount.remove(account);
  }

  private CheckedFile oldest() {
    return ofAccount.values().stream().min(comparing(CheckedFile::since)).orElseThrow();
  }

  private void forgetTheOld() {
    Instant before = clock.instant().minus(KEPT);
    ofAccount.values().removeIf(file -> file.since().isBefore(before));
  }
}
