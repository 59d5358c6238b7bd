package trialwood.field;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A tag as it is hung.
 *
 * @param code the candidate's code
 * @param seen what was seen, in about ten words
 * @param seedParentId the parent whose seed was sown there, if known
 * @param outstanding whether the breeder sees something in it that must not be lost lightly
 */
public record NewTag(
    String code,
    int row,
    int position,
    LocalDate on,
    @Nullable UUID personId,
    String seen,
    @Nullable UUID seedParentId,
    @Nullable String talkName,
    @Nullable String description,
    boolean outstanding) {}
