package trialwood.record;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The keys of forms already stored: a form sent twice is stored once. */
@Component
public class Submissions {

  private final JdbcClient jdbc;
  private final Clock clock;

  Submissions(JdbcClient jdbc, Clock clock) {
    this.jdbc = jdbc;
    this.clock = clock;
  }

  /**
   * Takes the form's key, in the transaction that stores the form. A second sender of the same key
   * waits for the first to finish and is then told that the work is done.
   *
   * @return true for the first, false when the form was stored before
   */
  @Transactional(propagation = Propagation.MANDATORY)
  public boolean first(UUID formKey) {
    return jdbc.sql(
                """
                insert into submission (form_key, username, at) values (:key, :username, :at)
                on conflict do nothing
                """)
            .param("key", formKey)
            .param("username", Recorder.account())
            .param("at", OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
            .update()
        == 1;
  }
}
