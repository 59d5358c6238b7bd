package trialwood.people;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What was said of a person from then on.
 *
 * @param username the account that said so
 */
public record PersonChange(
    Instant at, String username, String name, @Nullable String duty, boolean active) {}
