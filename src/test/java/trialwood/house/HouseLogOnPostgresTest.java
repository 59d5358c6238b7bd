package trialwood.house;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL. */
@Import({HouseLog.class, PostgresTestDatabase.class})
class HouseLogOnPostgresTest extends HouseLogTest {}
