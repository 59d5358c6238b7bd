package trialwood.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CodeKeyTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"C18-03", "c18-3", " C18 - 03 ", "C18-O3", "\u200fC18-03\u200e", "c18-003"})
  void a_code_is_found_however_it_was_typed(String typed) {
    assertThat(CodeKey.of(typed)).isEqualTo("C18-3");
  }

  @Test
  void the_letter_o_in_a_name_stays_a_letter() {
    assertThat(CodeKey.of("Oak-12")).isEqualTo("OAK-12");
  }

  @Test
  void different_codes_keep_different_keys() {
    assertThat(CodeKey.of("C18-30")).isNotEqualTo(CodeKey.of("C18-3"));
  }
}
