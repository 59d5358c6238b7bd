package trialwood.office;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same office, and the whole schema behind it, on PostgreSQL. */
@Import(PostgresTestDatabase.class)
class PeoplePagesOnPostgresTest extends PeoplePagesTest {}
