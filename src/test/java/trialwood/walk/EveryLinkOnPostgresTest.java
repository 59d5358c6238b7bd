package trialwood.walk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.test.context.ActiveProfiles;
import trialwood.people.Role;
import trialwood.testing.ApplicationTest;
import trialwood.testing.Footpath;
import trialwood.testing.PostgresTestDatabase;

/**
 * Every link that the demo nursery's pages show somebody leads to a page that opens for him, on
 * PostgreSQL: SQL that only H2 takes is found here. Other tests ask the same pages on H2.
 */
@ApplicationTest
@ActiveProfiles({"test", "demo"})
@Import({PostgresTestDatabase.class, Footpath.class})
class EveryLinkOnPostgresTest {

  @Autowired private Footpath footpath;

  @ParameterizedTest
  @EnumSource(names = {"ADMINISTRATOR", "BREEDER"})
  void every_link_that_somebody_sees_opens(Role role) throws Exception {
    assertThat(footpath.as(role).answers())
        .allSatisfy((address, status) -> assertThat(status).as(address).isBetween(200, 399));
  }
}
