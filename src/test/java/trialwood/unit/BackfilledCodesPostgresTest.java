package trialwood.unit;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

@Import(PostgresTestDatabase.class)
class BackfilledCodesPostgresTest extends BackfilledCodesTest {}
