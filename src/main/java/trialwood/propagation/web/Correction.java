package trialwood.propagation.web;

import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.web.Entry;

/** That a record takes the place of an earlier one, and why. */
record Correction(UUID earlier, String reason) {

  /** What the two boxes of a form say; nothing where the form is for a new record. */
  static Optional<Correction> read(
      Entry entry, @Nullable String corrects, @Nullable String supersedeReason) {
    if (corrects == null || corrects.isBlank()) {
      return Optional.empty();
    }
    return Optional.of(
        new Correction(
            entry.id("corrects", corrects, "This form could not be read. Open it afresh."),
            entry.words("supersedeReason", supersedeReason, "Say why the record is replaced.")));
  }
}
