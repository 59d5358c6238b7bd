package trialwood.stock;

import org.springframework.context.annotation.Import;
import trialwood.testing.PostgresTestDatabase;

/** The same on PostgreSQL. */
@Import(PostgresTestDatabase.class)
class StockRecordsPostgresTest extends StockRecordsTest {}
