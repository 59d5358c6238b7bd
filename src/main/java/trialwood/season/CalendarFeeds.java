package trialwood.season;

import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Role;
import trialwood.people.Secret;

/** The private calendar addresses, one an account at most. */
@Repository
public class CalendarFeeds {

  private final JdbcClient jdbc;
  private final Clock clock;

  CalendarFeeds(JdbcClient jdbc, Clock clock) {
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * A new secret for the account, which ends the one before; it can be read here and never again.
   */
  @Transactional
  public Secret make(String username) {
    Secret secret = Secret.drawn();
    // two taps at once: the second waits, and its address is the one that holds
    jdbc.sql("select id from account where username = :username for update")
        .param("username", username)
        .query(UUID.class)
        .optional();
    revoke(username);
    jdbc.sql(
            """
            insert into calendar_feed (account_id, digest, made_at)
            select id, :digest, :now from account where username = :username
            """)
        .param("digest", secret.digest())
        .param("now", clock.instant().atOffset(ZoneOffset.UTC))
        .param("username", username)
        .update();
    return secret;
  }

  /** The account's address leads nowhere any more. */
  @Transactional
  public void revoke(String username) {
    jdbc.sql(
            """
            delete from calendar_feed
            where account_id in (select id from account where username = :username)
            """)
        .param("username", username)
        .update();
  }

  /** When the account's address was made, if it has one. */
  public Optional<Instant> madeAt(String username) {
    return jdbc.sql(
            """
            select f.made_at from calendar_feed f
            join account a on a.id = f.account_id where a.username = :username
            """)
        .param("username", username)
        .query(OffsetDateTime.class)
        .optional()
        .map(OffsetDateTime::toInstant);
  }

  /**
   * The role of the account whose secret it is; empty where it is nobody's, or the account closed.
   */
  public Optional<Role> roleBehind(Secret secret) {
    return jdbc.sql(
            """
            select a.role from calendar_feed f
            join account a on a.id = f.account_id
            where f.digest = :digest and a.enabled
            """)
        .param("digest", secret.digest())
        .query(Role.class)
        .optional();
  }
}
