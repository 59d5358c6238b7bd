package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What neither the compiler nor a page that is sent without a browser would notice. */
class StaticsTest {

  private static final Path RESOURCES = Path.of("src/main/resources");

  /** Thymeleaf adds the token against forged requests only where it writes the action itself. */
  @Test
  void every_form_that_stores_something_carries_its_token() throws IOException {
    List<String> forms =
        lines("templates", ".html").filter(line -> line.contains("method=\"post\"")).toList();

    assertThat(forms).hasSizeGreaterThan(40).allMatch(line -> line.contains("th:action="));
  }

  /** A browser reads on past a brace that was never closed and drops every rule behind it. */
  @Test
  void every_rule_of_the_style_sheets_is_closed() throws IOException {
    assertThat(files("static/css", ".css"))
        .isNotEmpty()
        .allSatisfy(
            file -> {
              String css = Files.readString(file);
              assertThat(count(css, '{')).as(file.toString()).isEqualTo(count(css, '}'));
            });
  }

  private static long count(String text, char sign) {
    return text.chars().filter(c -> c == sign).count();
  }

  private static Stream<String> lines(String directory, String end) throws IOException {
    return files(directory, end).stream().flatMap(StaticsTest::lines);
  }

  private static Stream<String> lines(Path file) {
    try {
      return Files.readAllLines(file).stream();
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private static List<Path> files(String directory, String end) throws IOException {
    try (Stream<Path> all = Files.walk(RESOURCES.resolve(directory))) {
      return all.filter(file -> file.toString().endsWith(end)).toList();
    }
  }
}
