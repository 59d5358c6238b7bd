package trialwood.walk;

import static java.util.stream.Collectors.joining;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.web.server.LocalServerPort;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.annotation.DirtiesContext;
import org.springframework.test.context.ActiveProfiles;
import trialwood.office.DemoAccounts;

/**
 * The stakes of C18-03 and C18-04 that were exchanged in July 2022, put right on a phone. The demo
 * nursery has the correction on its sheets; it is taken back first, and made anew on the page.
 */
@Served
@ActiveProfiles({"test", "demo"})
@DirtiesContext
class ExchangedLabelsTest {

  @LocalServerPort private int port;
  @Autowired private JdbcClient jdbc;

  @Test
  void forty_pots_change_sides_and_no_record_is_touched() throws IOException {
    List<String> right = held();
    assertThat(right).isEqualTo(onTheSheet());
    long records = jdbc.sql("select count(*) from unit_record").query(Long.class).single();

    try (Browser phone = Browser.phone(port)) {
      phone.signIn("breeder", DemoAccounts.PASSWORD);
      phone.open("/units/22-C18-03-G1");
      phone.follow("See the correction");
      assertThat(phone.text()).contains("17 of the 20 pots in flower, all pink with a red eye");
      phone.type("reason", "To make it anew on the page.");
      phone.press("Take it back");
      assertThat(phone.text()).contains("what held before holds again");
      assertThat(held()).allMatch(line -> line.substring(3, 9).equals(line.split(" ")[1]));

      phone.open("/");
      assertThat(phone.text()).contains("17 of the 20 pots in flower");
      phone.follow("22-C18-03-G1");
      phone.follow("The labels are wrong");
      phone.choose("kind", "labels were exchanged");
      phone.type("others", "22-C18-04-G1");
      phone.type("from", "5 July 2022");
      phone.press("Show what follows");
      assertThat(phone.text())
          .contains("22-C18-03-G1: C18-03 becomes C18-04")
          .contains("and 20 labels of what came out since");
      assertThat(phone.fits()).isTrue();
      phone.choose("seen", "Flower in words: 17 of the 20 pots");
      phone.type("reason", "Stakes were exchanged when the trays left the mist.");
      phone.type("evidence", "Flowers beside both ortets, 6 September.");
      phone.choose("by", "RA");
      phone.press("Put the labels right");

      assertThat(phone.text()).contains("No record was changed", "Where the doubt began");
      assertThat(phone.text()).contains("C18-03 at the gate of container #1");
      assertThat(phone.fits()).isTrue();
      assertThat(held()).isEqualTo(right);
      assertThat(jdbc.sql("select count(*) from unit_record").query(Long.class).single())
          .isEqualTo(records);

      phone.open("/gates/container-1/C18-03");
      assertThat(phone.text()).contains("Labels behind this were put right on");
    }
  }

  /** Whose the lots and pots are, one line each. */
  private List<String> held() {
    return jdbc.sql(
            """
            select u.label || ' ' || a.code || ' ' || min(h.from_date) || ' ' || max(h.until_date)
            from holding h join unit u on u.id = h.unit_id join accession a on a.id = h.accession_id
            where u.label like '22-C18-03-G1%' or u.label like '22-C18-04-G1%'
            group by u.label, a.code order by u.label
            """)
        .query(String.class)
        .list();
  }

  private static List<String> onTheSheet() throws IOException {
    try (Reader file = Files.newBufferedReader(Path.of("demo-data", "50-ties.csv"));
        CSVParser ties =
            CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get().parse(file)) {
      return ties.stream()
          .map(
              tie ->
                  List.of(tie.get("unit"), tie.get("accession"), tie.get("from"), "9999-12-31")
                      .stream()
                      .collect(joining(" ")))
          .sorted()
          .collect(Collectors.toList());
    }
  }
}
