package trialwood.ground;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

@Import(PostgresTestDatabase.class)
class GroundPagesOnPostgresTest extends GroundPagesTest {}
