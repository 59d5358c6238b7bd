package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A rule left open swallows all that follow it, and every table of the house loses its form. */
class StyleSheetTest {

  @ParameterizedTest
  @ValueSource(
      strings = {"tokens", "base", "layout", "forms", "tables", "figures", "field", "print"})
  void every_rule_is_closed_before_the_next_begins(String sheet) throws IOException {
    String css =
        Files.readString(Path.of("src/main/resources/static/css", sheet + ".css"))
            .replaceAll("(?s)/\\*.*?\\*/", "");
    Deque<String> open = new ArrayDeque<>();
    for (String line : css.lines().map(String::strip).toList()) {
      if (line.endsWith("{")) {
        assertThat(open).as(line).allMatch(outer -> outer.startsWith("@"));
        open.push(line);
      } else if (line.equals("}")) {
        open.pop();
      }
    }
    assertThat(open).isEmpty();
  }
}
