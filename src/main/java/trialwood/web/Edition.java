package trialwood.web;

import java.io.IOException;
import java.io.InputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.ResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * Which edition of its pages this installation serves. A device that keeps pages throws them away
 * when another edition comes.
 */
@Component
class Edition {

  private static final int LETTERS = 12;

  private final String mark;

  Edition(ResourcePatternResolver files) throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    for (String folder : new String[] {"static", "templates"}) {
      Resource[] found = files.getResources("classpath:/%s/**/*.*".formatted(folder));
      Arrays.sort(found, Comparator.comparing(file -> String.valueOf(file.getFilename())));
      for (Resource file : found) {
        try (InputStream content = file.getInputStream()) {
          digest.update(content.readAllBytes());
        }
      }
    }
    this.mark = HexFormat.of().formatHex(digest.digest()).substring(0, LETTERS);
  }

  /** The same for the same style sheets, scripts and templates. */
  String mark() {
    return mark;
  }
}
