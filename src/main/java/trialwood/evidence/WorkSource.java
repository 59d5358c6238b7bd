package trialwood.evidence;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/** A stage that knows which work its records ask for. */
public interface WorkSource {

  /** What can be done on that day or should have been before. */
  List<DueWork> due(LocalDate today);

  /** What comes after that day, up to and with another, as far as the records tell. */
  default List<DueWork> coming(LocalDate today, LocalDate until) {
    return List.of();
  }

  /**
   * Places that nobody may enter on that day, with the reason as a sentence: all that is due there
   * is blocked by it, whoever asks for it. A place that begins with such words lies in it, whatever
   * its capitals.
   */
  default Map<String, String> closedPlaces(LocalDate today) {
    return Map.of();
  }
}
