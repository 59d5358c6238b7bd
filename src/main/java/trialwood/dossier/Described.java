package trialwood.dossier;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.crop.Window;

/**
 * One line of the description.
 *
 * @param sample all values on the candidate's plants and plots
 * @param beside the known varieties that were seen where and when the candidate was
 */
public record Described(Trait trait, Sample sample, List<Beside> beside) {

  /** The first day from that one on on which the trait can be seen; none where any day serves. */
  public @Nullable LocalDate nextChance(LocalDate from) {
    Window window = trait.window();
    if (window == null || window.contains(from)) {
      return window == null ? null : from;
    }
    LocalDate start = window.from().atYear(from.getYear());
    return start.isAfter(from) ? start : window.from().atYear(from.getYear() + 1);
  }

  /** The last day of the window that is open on that day or opens next. */
  public @Nullable LocalDate lastChance(LocalDate from) {
    Window window = trait.window();
    if (window == null) {
      return null;
    }
    LocalDate end = window.until().atYear(from.getYear());
    return end.isBefore(from) ? window.until().atYear(from.getYear() + 1) : end;
  }

  /** Whether this year's window has closed and nothing was seen in it. */
  public boolean isMissed(LocalDate on) {
    Window window = trait.window();
    return window != null
        && !window.from().isAfter(window.until())
        && window.until().atYear(on.getYear()).isBefore(on)
        && (sample.until() == null || sample.until().getYear() < on.getYear());
  }
}
