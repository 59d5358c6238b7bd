package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Contrast of the palette by the formula of WCAG 2.2 (definitions of "contrast ratio" and "relative
 * luminance"): 7:1 for text and data, 4.5:1 for the coloured words that also carry a mark.
 */
class PaletteTest {

  @ParameterizedTest
  @CsvSource({
    "ink,paper,7",
    "ink,sheet,7",
    "ink,leaf-pale,7",
    "ink,ochre-pale,7",
    "ink,clay-pale,7",
    "ink-2,paper,7",
    "ink-2,sheet,7",
    "leaf-dark,paper,7",
    "leaf-dark,sheet,7",
    "ochre,sheet,4.5",
    "clay,sheet,4.5",
    "clay,paper,4.5",
    "clay,clay-pale,4.5",
    "slate,sheet,4.5",
    "sheet,leaf,4.5",
    "sheet,ink,7"
  })
  void words_can_be_read_on_their_ground(String words, String ground, double least)
      throws IOException {
    double a = luminance(words);
    double b = luminance(ground);
    assertThat((Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)).isGreaterThanOrEqualTo(least);
  }

  private static double luminance(String token) throws IOException {
    String css = Files.readString(Path.of("src/main/resources/static/css/tokens.css"));
    Matcher colour = Pattern.compile("--" + token + ": #([0-9a-f]{6});").matcher(css);
    assertThat(colour.find()).as(token).isTrue();
    int rgb = Integer.parseInt(colour.group(1), 16);
    return 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
  }

  private static double linear(int channel) {
    double c = (channel & 0xff) / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
