package trialwood.dossier;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * The shortest clock of a candidate on one route.
 *
 * @param started the disclosure that started it
 * @param filing the first filing on the route, if there is one
 */
public record RouteClock(
    FilingRoute route, Disclosure started, NoveltyClock clock, @Nullable Filing filing) {

  /** Whether nothing was filed on the route and there is still time for it. */
  public boolean isOpen(LocalDate on) {
    return filing == null && clock.daysLeft(on) >= 0;
  }

  /** Whether the last day went by without a filing. */
  public boolean isRunOut(LocalDate on) {
    return filing == null && clock.daysLeft(on) < 0;
  }

  /** How it stands on that day, in words. */
  public String standing(LocalDate on) {
    if (filing != null) {
      long spare = clock.daysLeft(filing.onDate());
      return spare < 0
          ? "filed %d days after the last day".formatted(-spare)
          : "filed with %d days to spare".formatted(spare);
    }
    long left = clock.daysLeft(on);
    return left < 0 ? "ran out %d days ago".formatted(-left) : "%d days left".formatted(left);
  }
}
