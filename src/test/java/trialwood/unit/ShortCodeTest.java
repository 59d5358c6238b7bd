package trialwood.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trialwood.record.Refused;

class ShortCodeTest {

  private static final String SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  /** The first numbers that a new record gives, and some of five letters. */
  private static final List<String> CODES =
      LongStream.concat(LongStream.range(524288, 525000), LongStream.range(1048570, 1048600))
          .mapToObj(ShortCode::of)
          .flatMap(Optional::stream)
          .map(ShortCode::text)
          .toList();

  /**
   * The worked example of Guidelines for the Blood Transfusion Services in the UK, annex 2, ISBT
   * 128 check character calculation: the weighted sum is 148,354, the check value 17, written H.
   * The second is worked by hand: G is 16, and 16·16 = 256 = 6·37 + 34, so 38 - 34 = 4.
   */
  @ParameterizedTest
  @CsvSource({"G123498654321, H", "G000, 4"})
  void the_check_character_is_that_of_iso_7064_mod_37_2(String text, char check) {
    assertThat(CheckCharacter.of(text)).isEqualTo(check);
  }

  @Test
  void a_number_is_written_in_32_signs_and_its_check_character() {
    assertThat(ShortCode.of(524288)).contains(new ShortCode("G0004"));
    assertThat(ShortCode.of(524289)).contains(new ShortCode("G0012"));
    assertThat(ShortCode.of(1048574)).contains(new ShortCode("ZZZYQ"));
    assertThat(ShortCode.of(1048576)).contains(new ShortCode("100006"));
    assertThat(CODES).doesNotHaveDuplicates().allMatch(code -> code.matches("[" + SIGNS + "]+"));
    assertThat(ShortCode.of(524298)).as("G00A would end in L").isEmpty();
  }

  @Test
  void one_wrong_character_is_always_refused() {
    for (String code : CODES) {
      for (int at = 0; at < code.length(); at++) {
        for (char sign : SIGNS.toCharArray()) {
          if (sign != code.charAt(at)) {
            assertRefused(code.substring(0, at) + sign + code.substring(at + 1));
          }
        }
      }
    }
  }

  @Test
  void a_swap_of_neighbours_is_always_refused() {
    List<String> swapped = new ArrayList<>();
    for (String code : CODES) {
      for (int at = 0; at + 1 < code.length(); at++) {
        if (code.charAt(at) != code.charAt(at + 1)) {
          swapped.add(
              code.substring(0, at)
                  + code.charAt(at + 1)
                  + code.charAt(at)
                  + code.substring(at + 2));
        }
      }
    }
    assertThat(swapped).hasSizeGreaterThan(1500).allSatisfy(ShortCodeTest::assertRefused);
  }

  private static void assertRefused(String typed) {
    assertThat(ShortCode.readIfAny(typed)).as(typed).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "G0012",
        "g0012",
        " g0 012 ",
        "G001-2",
        "GOOl2",
        "goOI2",
        "]Q3G0012",
        "~G0012",
        "\u0002G0012\u0003",
        "G0012\t",
        "G0012\r\n",
        "https://nursery.example/s/G0012",
        "HTTPS://NURSERY.EXAMPLE:8443/S/G0012",
        "https://nursery.example/s/g001-2?from=phone",
      })
  void it_is_read_however_it_was_typed_or_scanned(String typed) {
    assertThat(ShortCode.read(typed)).isEqualTo(new ShortCode("G0012"));
  }

  @Test
  void v_is_read_where_u_was_written() {
    assertThat(ShortCode.read("G005U")).isEqualTo(ShortCode.read("g005v"));
  }

  @Test
  void what_is_wrong_is_said_in_plain_words() {
    assertThatThrownBy(() -> ShortCode.read("G0013"))
        .isInstanceOf(Refused.class)
        .hasMessage(
            "G0013 is no code: a character is wrong, or two have changed places. Read it once more.");
    for (String typed : List.of("", " ", "G00", "22-C18-03-10", "G0*12", "ＧＯＯ１２", "é0012", "]Q")) {
      assertThatThrownBy(() -> ShortCode.read(typed))
          .as(typed)
          .isInstanceOf(Refused.class)
          .hasMessageContaining("five or six letters and figures");
    }
  }
}
