package trialwood.container;

import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Whose plants a unit was, by what is said of it today. */
@Component
public class Holders {

  private final JdbcClient jdbc;

  Holders(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  public Optional<UUID> of(UUID unit, LocalDate day) {
    return jdbc.sql(
            """
            select accession_id from holding
            where unit_id = :unit and from_date <= :day and until_date > :day
            """)
        .param("unit", unit)
        .param("day", day)
        .query(UUID.class)
        .optional();
  }
}
