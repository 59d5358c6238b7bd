package trialwood.dossier;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One value of a described trait on a plant or plot, with where it stood.
 *
 * @param words the value where it is none to average: a colour, a day, the step of a scale
 */
record Seen(
    UUID accessionId,
    UUID unitId,
    UUID traitId,
    String kind,
    @Nullable String site,
    LocalDate onDate,
    @Nullable BigDecimal number,
    @Nullable String words) {

  /** Kind of unit, place and season: only values alike in all three are set side by side. */
  List<Object> alike() {
    return List.of(kind, place(), season());
  }

  int season() {
    return onDate.getYear();
  }

  /** The site, or the nursery's own yard. */
  String place() {
    return site == null ? "the nursery" : site;
  }
}
