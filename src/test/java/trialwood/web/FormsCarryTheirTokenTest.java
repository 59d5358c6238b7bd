package trialwood.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Only a form with {@code th:action} is given the token that proves it came from this house;
 * without it the browser's form is taken for a late one and nothing is stored.
 */
class FormsCarryTheirTokenTest {

  private static final Pattern SENT = Pattern.compile("<form[^>]*method=\"post\"[^>]*>");

  @Test
  void every_form_that_stores_something_carries_its_token() throws IOException {
    List<String> forms;
    try (Stream<Path> files = Files.walk(Path.of("src/main/resources/templates"))) {
      forms = files.filter(Files::isRegularFile).flatMap(FormsCarryTheirTokenTest::sent).toList();
    }
    assertThat(forms).isNotEmpty().allMatch(form -> form.contains(" th:action"));
  }

  private static Stream<String> sent(Path file) {
    try {
      return SENT.matcher(Files.readString(file)).results().map(form -> file + " " + form.group());
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
