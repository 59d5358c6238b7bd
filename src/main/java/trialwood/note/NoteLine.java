package trialwood.note;

import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A note as it is read.
 *
 * @param replaced a later note stands for this one
 * @param reason why it stands for an earlier one
 * @param photographs in the order in which they were added
 */
public record NoteLine(
    UUID id,
    LocalDate onDate,
    String words,
    @Nullable String initials,
    boolean replaced,
    @Nullable String reason,
    List<Picture> photographs) {

  /** A photograph of a note; its pixels have a page of their own. */
  public record Picture(UUID id, UUID noteId, int width, int height, @Nullable LocalDate takenOn) {}
}
