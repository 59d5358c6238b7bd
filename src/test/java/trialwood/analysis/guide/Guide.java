package trialwood.analysis.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import trialwood.analysis.Interval;

/** What docs/methods.md states, line breaks aside. */
record Guide(String text) {

  static Guide read() {
    try {
      return new Guide(Files.readString(Path.of("docs/methods.md")).replaceAll("\\s+", " "));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Holds the guide to a sentence with these numbers in it. */
  void states(String sentence, Object... numbers) {
    assertThat(text).contains(String.format(Locale.ROOT, sentence, numbers));
  }

  static String percent(Interval interval) {
    return String.format(Locale.ROOT, "%.0f–%.0f %%", 100 * interval.low(), 100 * interval.high());
  }

  static String points(Interval interval) {
    return String.format(Locale.ROOT, "%.0f to %.0f", 100 * interval.low(), 100 * interval.high());
  }
}
