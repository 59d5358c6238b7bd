package trialwood.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The files of the demo nursery. */
final class DemoFiles {

  private static final Path FOLDER = Path.of("demo-data");

  private DemoFiles() {}

  static byte[] of(Sheet sheet) {
    try {
      return Files.readAllBytes(FOLDER.resolve(sheet.fileName()));
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  static String text(Sheet sheet) {
    return new String(of(sheet), java.nio.charset.StandardCharsets.UTF_8);
  }
}
