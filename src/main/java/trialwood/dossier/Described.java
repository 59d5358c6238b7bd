package trialwood.dossier;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.crop.Window;

/**
 * One line of the description.
 *
 * @param sample all values on the candidate's plants and plots
 * @param own its values on kinds of units and in seasons in which the check was seen too
 * @param check the check's values on the same kinds of units in the same seasons
 */
public record Described(Trait trait, Sample sample, Sample own, Sample check) {

  public boolean isCompared() {
    return own.n() > 0 && check.n() > 0;
  }

  /** The first day from that one on on which the trait can be seen; none where any day serves. */
  public @Nullable LocalDate nextChance(LocalDate from) {
    Window window = trait.window();
    if (window == null || window.contains(from)) {
      return window == null ? null : from;
    }
    LocalDate start = window.from().atYear(from.getYear());
    return start.isAfter(from) ? start : window.from().atYear(from.getYear() + 1);
  }
}
