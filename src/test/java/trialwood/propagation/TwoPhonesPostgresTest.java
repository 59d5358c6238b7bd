package trialwood.propagation;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL. */
@Import({PropagationSlice.class, PostgresTestDatabase.class})
class TwoPhonesPostgresTest extends TwoPhonesTest {}
