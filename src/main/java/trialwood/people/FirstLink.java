package trialwood.people;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Refused;

/**
 * The one-time link that makes the first administrator. Only the digest of its token is stored; it
 * holds for a day, once, and only while there is no account.
 */
@Component
public class FirstLink {

  static final Duration HOLDS = Duration.ofHours(24);

  private final JdbcClient jdbc;
  private final Accounts accounts;
  private final Passwords passwords;
  private final Clock clock;

  FirstLink(JdbcClient jdbc, Accounts accounts, Passwords passwords, Clock clock) {
    this.jdbc = jdbc;
    this.accounts = accounts;
    this.passwords = passwords;
    this.clock = clock;
  }

  /** A new token, which ends the links before it; empty when there is an account already. */
  @Transactional
  public Optional<String> issue() {
    if (accounts.count() > 0) {
      return Optional.empty();
    }
    Secret token = Secret.drawn();
    jdbc.sql("delete from first_link where used_at is null").update();
    jdbc.sql("insert into first_link (digest, expires_at) values (:digest, :expires)")
        .param("digest", token.digest())
        .param("expires", utc(clock.instant().plus(HOLDS)))
        .update();
    return Optional.of(token.text());
  }

  /** Whether the link still leads anywhere. */
  @Transactional(readOnly = true)
  public boolean holds(String token) {
    return accounts.count() == 0
        && jdbc.sql(
                    """
                    select count(*) from first_link
                    where digest = :digest and used_at is null and expires_at > :now
                    """)
                .param("digest", new Secret(token).digest())
                .param("now", utc(clock.instant()))
                .query(Long.class)
                .single()
            == 1;
  }

  /** Makes the first administrator and uses the link up. */
  @Transactional
  public void use(String token, String username, String password) {
    int used =
        jdbc.sql(
                """
                update first_link set used_at = :now
                where digest = :digest and used_at is null and expires_at > :now
                """)
            .param("digest", new Secret(token).digest())
            .param("now", utc(clock.instant()))
            .update();
    if (used != 1 || accounts.count() > 0) {
      throw new Refused("link", "This link is used up or too old. Start again for a new one.");
    }
    accounts.save(
        new Account(username, passwords.hashed(password), Role.ADMINISTRATOR, null, Set.of()));
  }

  private static OffsetDateTime utc(Instant instant) {
    return instant.atOffset(ZoneOffset.UTC);
  }
}
