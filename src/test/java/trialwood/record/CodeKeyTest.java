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

  @ParameterizedTest
  @ValueSource(strings = {"C18-03", "Ähre 7", "CK-B", "x", "22.C18_03+G1"})
  void a_plain_code_can_stand_in_the_address_of_a_page(String code) {
    assertThat(CodeKey.isPlain(code)).isTrue();
  }

  /** RFC 3986: "/", "?" and "#" part an address, "%" begins an escape, "." and ".." are steps. */
  @ParameterizedTest
  @ValueSource(
      strings = {"H/03", "a?b", "#1", "C%18", "a;b", "a\\b", ".", "..", "-7", "{x}", "a\nb", " "})
  void a_code_that_an_address_would_take_apart_is_not_plain(String code) {
    assertThat(CodeKey.isPlain(code)).isFalse();
  }
}
