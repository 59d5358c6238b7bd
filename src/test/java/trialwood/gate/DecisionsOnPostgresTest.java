package trialwood.gate;

import org.springframework.context.annotation.Import;
import org.springframework.transaction.annotation.Transactional;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL, whose jsonb is stricter. */
@Import(PostgresTestDatabase.class)
@Transactional
class DecisionsOnPostgresTest extends DecisionsTest {}
