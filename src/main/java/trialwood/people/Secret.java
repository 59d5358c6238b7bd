package trialwood.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * The part of an address that lets in whoever knows it: 256 random bits, of which only the digest
 * is stored.
 */
public record Secret(String text) {

  private static final int BYTES = 32;
  private static final SecureRandom RANDOM = new SecureRandom();

  /** One that nobody had before. */
  public static Secret drawn() {
    byte[] bytes = new byte[BYTES];
    RANDOM.nextBytes(bytes);
    return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
  }

  /** SHA-256, in hexadecimal. */
  public String digest() {
    try {
      return HexFormat.of()
          .formatHex(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java has SHA-256", impossible);
    }
  }
}
