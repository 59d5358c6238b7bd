package trialwood.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * That a record takes the place of an earlier one, and why.
 *
 * @param earlier the record that was wrong
 */
public record Instead(UUID earlier, String reason) {

  /** What the two boxes of a form say; nothing where the form is for a new record. */
  public static @Nullable Instead read(
      Entry entry, @Nullable UUID corrects, @Nullable String supersedeReason) {
    return corrects == null
        ? null
        : new Instead(
            corrects,
            entry.words(
                "supersedeReason", supersedeReason, "Say why the earlier one is replaced."));
  }
}
