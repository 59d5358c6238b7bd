package trialwood.correction;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.web.Form;

/**
 * What somebody found out about labels. The first half says what was wrong, the second what is to
 * be said now.
 *
 * @param kind {@link #SWAP} or {@link #OTHER}
 * @param labels the units that are spoken of, one on a line
 * @param others those with which their labels were exchanged
 * @param accession whose they are, where labels were not exchanged
 * @param until the first day on which it no longer holds; empty while it lasts
 * @param units the ticked ones
 * @param seen the record that showed it first
 * @param settles questions that are answered by it
 */
record CorrectionForm(
    @Nullable UUID formKey,
    @Nullable String kind,
    @Nullable String labels,
    @Nullable String others,
    @Nullable String accession,
    @Nullable String from,
    @Nullable String until,
    @Nullable List<UUID> units,
    @Nullable String seen,
    @Nullable List<UUID> settles,
    @Nullable String reason,
    @Nullable String evidence,
    @Nullable String by)
    implements Form {

  static final String SWAP = "swap";
  static final String OTHER = "other";

  /** With its key, and with a proposal's ticks set. */
  CorrectionForm opened(List<UUID> ticked, List<UUID> asked) {
    return new CorrectionForm(
        UUID.randomUUID(),
        Objects.requireNonNullElse(kind, SWAP),
        labels,
        others,
        accession,
        from,
        until,
        ticked,
        seen,
        asked,
        reason,
        evidence,
        by);
  }

  boolean isSwap() {
    return !OTHER.equals(kind);
  }

  /** Whether it was sent, and not only opened with a label filled in. */
  boolean isAsked() {
    return from != null;
  }

  public boolean ticks(UUID unit) {
    return units != null && units.contains(unit);
  }

  public boolean answers(UUID doubt) {
    return settles != null && settles.contains(doubt);
  }
}
