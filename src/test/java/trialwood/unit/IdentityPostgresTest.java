package trialwood.unit;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL. */
@Import({Identity.class, PostgresTestDatabase.class})
class IdentityPostgresTest extends IdentityTest {}
