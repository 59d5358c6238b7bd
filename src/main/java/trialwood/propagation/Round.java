package trialwood.propagation;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * The way along the bench today.
 *
 * @param trays all that stand there, in bench order, also those with nothing to do
 */
public record Round(List<RoundTray> trays) {

  /** The part of it that a filter covers. */
  public Round along(RoundFilter filter) {
    return new Round(trays.stream().filter(filter::covers).toList());
  }

  /** Those with something to do, done or blocked today. */
  public List<RoundTray> listed() {
    return trays.stream().filter(tray -> tray.state() != RoundTray.State.RESTING).toList();
  }

  /** How many are in a state. */
  public long count(RoundTray.State state) {
    return trays.stream().filter(tray -> tray.state() == state).count();
  }

  /** How many somebody should go to now. */
  public long waiting() {
    return trays.stream().filter(RoundTray::isWaiting).count();
  }

  /** The first to go to. */
  public Optional<RoundTray> first() {
    return trays.stream().filter(RoundTray::isWaiting).findFirst();
  }

  /** The next to go to after a tray; at the end of the bench, one that was skipped. */
  public Optional<RoundTray> after(String label) {
    int here = at(label);
    return Stream.concat(trays.stream().skip(here + 1L), trays.stream().limit(Math.max(here, 0)))
        .filter(RoundTray::isWaiting)
        .findFirst();
  }

  /** The one before it that somebody should go to. */
  public Optional<RoundTray> before(String label) {
    return trays.stream()
        .limit(Math.max(at(label), 0))
        .filter(RoundTray::isWaiting)
        .reduce((earlier, later) -> later);
  }

  /** Its place on the list, from 1; nothing where it is not on it. */
  public Optional<Integer> placeOf(String label) {
    List<RoundTray> listed = listed();
    return IntStream.range(0, listed.size())
        .filter(i -> listed.get(i).tray().equals(label))
        .mapToObj(i -> i + 1)
        .findFirst();
  }

  private int at(String label) {
    return IntStream.range(0, trays.size())
        .filter(i -> trays.get(i).tray().equals(label))
        .findFirst()
        .orElse(-1);
  }
}
