package trialwood.analysis.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Our own reference files are what was given, byte for byte. */
class ReferenceFilesTest {

  private static final Path FOLDER = ReferenceFolder.ours().path();

  @Test
  void no_file_is_changed_missing_or_added() throws IOException {
    assertThat(found()).isEqualTo(given());
  }

  /** The list of sums, by the name of the file. */
  private static Map<String, String> given() throws IOException {
    return Files.readAllLines(FOLDER.resolve("SHA256SUMS")).stream()
        .map(line -> line.split("\\s+", 2))
        .collect(Collectors.toMap(parts -> parts[1], parts -> parts[0], (a, b) -> a, TreeMap::new));
  }

  private static Map<String, String> found() throws IOException {
    try (Stream<Path> files = Files.walk(FOLDER)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> !file.endsWith("SHA256SUMS"))
          .collect(
              Collectors.toMap(
                  file -> FOLDER.relativize(file).toString().replace('\\', '/'),
                  ReferenceFilesTest::sum,
                  (a, b) -> a,
                  TreeMap::new));
    }
  }

  private static String sum(Path file) {
    try {
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(digest);
    } catch (IOException | NoSuchAlgorithmException e) {
      throw new IllegalStateException(file.toString(), e);
    }
  }
}
