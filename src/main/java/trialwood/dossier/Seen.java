package trialwood.dossier;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** One value of a described trait on a plant or plot, with where it stood. */
record Seen(
    UUID accessionId,
    UUID traitId,
    String kind,
    @Nullable String site,
    LocalDate onDate,
    @Nullable BigDecimal number,
    @Nullable String words) {

  /** The kind of unit and the season: only values alike in both are set side by side. */
  List<Object> alike() {
    return List.of(kind, onDate.getYear());
  }
}
