package trialwood.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.test.context.ActiveProfiles;

/** The demo stands as soon as the application has started. */
@ExchangeTest
@ActiveProfiles("demo")
class DemoNurseryTest {

  @Autowired private Sheets sheets;
  @Autowired private ImportRecords records;
  @Autowired private JdbcTemplate jdbc;

  @Test
  void every_sheet_was_taken_in_once() {
    assertThat(records.findAll().stream().map(ImportRecord::sheet))
        .containsExactlyInAnyOrderElementsOf(sheets.all().stream().map(Sheet::name).toList());
  }

  @Test
  void the_story_is_on_record() {
    assertThat(count("candidate")).isEqualTo(24);
    assertThat(count("tray")).isEqualTo(109);
    assertThat(count("observation")).isEqualTo(4_363);
  }

  @Test
  void the_exchanged_stakes_were_put_right_for_two_lots_and_forty_pots() {
    assertThat(
            jdbc.queryForObject(
                "select count(distinct unit_id) from holding h where exists (select 1 from holding e"
                    + " where e.unit_id = h.unit_id and e.accession_id <> h.accession_id)"
                    + " or exists (select 1 from tie t where t.unit_id = h.unit_id"
                    + " and t.accession_id <> h.accession_id)",
                Integer.class))
        .isEqualTo(42);
  }

  private int count(String table) {
    return jdbc.queryForObject("select count(*) from " + table, Integer.class);
  }
}
