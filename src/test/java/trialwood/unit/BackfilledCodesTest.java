package trialwood.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.TestPropertySource;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import trialwood.testing.RecordTest;

/** A record that was kept before labels bore codes. */
@RecordTest
@TestPropertySource(properties = "spring.flyway.clean-disabled=false")
@Transactional(propagation = Propagation.NOT_SUPPORTED)
class BackfilledCodesTest {

  @Autowired private Flyway flyway;
  @Autowired private JdbcClient jdbc;

  @AfterEach
  void as_it_is_today() {
    flyway.clean();
    flyway.migrate();
  }

  @Test
  void every_unit_that_was_there_gets_a_code_whose_check_agrees() {
    flyway.clean();
    Flyway.configure().configuration(flyway.getConfiguration()).target("17").load().migrate();
    IntStream.range(0, 2000).forEach(this::place);

    flyway.migrate();

    List<String> codes =
        jdbc.sql("select code from short_code order by code").query(String.class).list();
    assertThat(codes)
        .hasSize(2000)
        .allSatisfy(code -> assertThat(ShortCode.read(code).text()).isEqualTo(code))
        .allMatch(code -> code.compareTo("G000") < 0);
  }

  private void place(int nth) {
    jdbc.sql(
            "insert into unit (id, kind, label, label_key) values (gen_random_uuid(), 'TRAY', ?, ?)")
        .params("T-" + nth, "T-" + nth)
        .update();
  }
}
