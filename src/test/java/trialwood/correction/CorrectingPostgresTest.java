package trialwood.correction;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL. */
@Import({CorrectionSlice.class, PostgresTestDatabase.class})
class CorrectingPostgresTest extends CorrectingTest {}
