package trialwood.exchange;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL: every stage's records in, out, and in again. */
@Import(PostgresTestDatabase.class)
class RoundTripOnPostgresTest extends RoundTripTest {}
