package trialwood.people;

import java.nio.charset.StandardCharsets;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import trialwood.record.Check;

/** Takes a new password and keeps only what cannot be turned back into it. */
@Component
public class Passwords {

  /** Shown beside the box. */
  public static final String RULE =
      "At least 12 characters; three or four words that do not belong together do well.";

  private static final int SHORTEST = 12;

  /** The hash looks at no more bytes than these. */
  private static final int MOST_BYTES = 72;

  private final PasswordEncoder encoder;

  Passwords(PasswordEncoder encoder) {
    this.encoder = encoder;
  }

  /** The hash of a password that keeps the rule; refused beside {@code password} otherwise. */
  public String hashed(String typed) {
    Check.that()
        .holds(
            typed.codePointCount(0, typed.length()) >= SHORTEST,
            "password",
            "The password is too short: at least 12 characters.")
        .holds(
            typed.getBytes(StandardCharsets.UTF_8).length <= MOST_BYTES,
            "password",
            "The password is too long: at most 72 letters, fewer with accents.")
        .orRefuse();
    return encoder.encode(typed);
  }
}
