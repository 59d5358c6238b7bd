package trialwood.propagation.web;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriComponentsBuilder;
import trialwood.propagation.Round;
import trialwood.propagation.RoundFilter;
import trialwood.propagation.RoundTray;

/** Where on a round a form stands, and the way on: all of it is in the address. */
record RoundPlace(Round round, RoundFilter filter, String tray) {

  /** Address of the list. */
  static String list(RoundFilter filter) {
    return filtered(UriComponentsBuilder.fromPath("/bench/round"), filter);
  }

  /** Address of a form of a tray, within the round or by itself. */
  static String form(String tray, String form, @Nullable RoundFilter filter) {
    UriComponentsBuilder address =
        UriComponentsBuilder.fromPath("/bench/trays").pathSegment(tray, form);
    return filter == null
        ? address.encode().toUriString()
        : filtered(address.queryParam("round", "on"), filter);
  }

  static String form(RoundTray tray, RoundFilter filter) {
    return form(tray.tray(), tray.task().form(), filter);
  }

  private static String filtered(UriComponentsBuilder address, RoundFilter filter) {
    return address
        .queryParamIfPresent("bench", Optional.ofNullable(filter.bench()))
        .queryParamIfPresent("run", Optional.ofNullable(filter.run()))
        .queryParamIfPresent("block", Optional.ofNullable(filter.block()))
        .encode()
        .toUriString();
  }

  public String list() {
    return list(filter);
  }

  /** As "3 of 36", or how many wait where the tray is not on the list. */
  public String position() {
    return round
        .placeOf(tray)
        .map(place -> "%d of %d".formatted(place, round.listed().size()))
        .orElseGet(() -> "%d waiting".formatted(round.waiting()));
  }

  /** The tray after it that waits; null at the end. */
  public @Nullable Step next() {
    return round.after(tray).map(to -> new Step(to.tray(), form(to, filter))).orElse(null);
  }

  /** The tray before it that waits; null at the beginning. */
  public @Nullable Step back() {
    return round.before(tray).map(to -> new Step(to.tray(), form(to, filter))).orElse(null);
  }

  /** Where to go once this tray is stored: the next form, or the list when none waits. */
  String onwards() {
    return round.after(tray).map(to -> form(to, filter)).orElseGet(this::list);
  }

  record Step(String tray, String href) {}
}
