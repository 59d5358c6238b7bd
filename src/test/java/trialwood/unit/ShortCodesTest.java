package trialwood.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;
import trialwood.record.Refused;
import trialwood.testing.RecordTest;

@RecordTest
@Import(ShortCodes.class)
class ShortCodesTest {

  @Autowired private Units units;
  @Autowired private ShortCodes codes;
  @Autowired private JdbcClient jdbc;

  @Test
  void every_new_unit_has_a_code_of_its_own() {
    stick("24-LX-1", "24-LX-2", "24-LX-3");

    assertThat(List.of("24-LX-1", "24-LX-2", "24-LX-3"))
        .extracting(this::codeOf)
        .doesNotHaveDuplicates()
        .allSatisfy(code -> assertThat(code.text()).hasSize(5));
  }

  @Test
  void a_label_keeps_the_code_it_bore_in_another_record() {
    codes.bring("24-lx-07", new ShortCode("G0012"));
    stick("24-LX-7");
    assertThat(codeOf("24-LX-7")).isEqualTo(new ShortCode("G0012"));
  }

  @Test
  void codes_that_were_brought_are_passed_over() {
    long next = jdbc.sql("select nextval('short_code_seq')").query(Long.class).single();
    for (long n = next + 1; n <= next + 40; n++) {
      String label = "24-B-" + n;
      ShortCode.of(n).ifPresent(code -> codes.bring(label, code));
    }
    codes.passBrought();
    stick("24-LX-1");
    assertThat(codeOf("24-LX-1").text()).hasSize(5);
  }

  @Test
  void neither_a_code_nor_a_label_is_given_twice() {
    stick("24-LX-1");
    ShortCode given = codeOf("24-LX-1");
    assertThatThrownBy(() -> codes.bring("24-LX-2", given))
        .isInstanceOf(Refused.class)
        .hasMessage("The code %s is on another label.".formatted(given));
    assertThatThrownBy(() -> codes.bring("24-lx-01", new ShortCode("ZZZYQ")))
        .isInstanceOf(Refused.class)
        .hasMessage("The label 24-lx-01 has a code already.");
  }

  private void stick(String... labels) {
    for (String label : labels) {
      units.saveAndFlush(new Unit(UnitKind.TRAY, label, null));
    }
  }

  private ShortCode codeOf(String label) {
    return jdbc.sql(
            """
            select s.code from short_code s join unit u on u.label_key = s.label_key
            where u.label = ?
            """)
        .param(label)
        .query((row, nth) -> new ShortCode(row.getString(1)))
        .single();
  }
}
