package trialwood.dossier;

import java.time.LocalDate;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The first asexual reproduction: of all batches whose final counts found roots, the one that was
 * counted first.
 */
public record FirstRooting(
    UUID accessionId,
    String batch,
    String run,
    String source,
    @Nullable String bench,
    @Nullable String cutting,
    @Nullable Integer lengthMm,
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable Integer ppm,
    LocalDate stuckOn,
    LocalDate countedOn,
    int rooted,
    int stuck,
    @Nullable String stuckBy) {

  /** From what the cuttings came, in words. */
  public String from() {
    return switch (source) {
      case "ORTET" -> "the original plant";
      case "STOCK_PLANT" -> "a stock plant";
      default -> "a container plant";
    };
  }

  /** How it was done, in words. */
  public String how() {
    return Stream.of(
            cutting == null ? "cuttings" : cutting + " cuttings",
            lengthMm == null ? "" : lengthMm + " mm",
            wounding == null || wounding.equals("none") ? "" : "wounded: " + wounding,
            hormone == null ? "" : hormone + (ppm == null ? "" : " " + ppm + " ppm"),
            form == null ? "" : form)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }
}
