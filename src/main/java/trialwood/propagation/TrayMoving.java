package trialwood.propagation;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.site.Bench;
import trialwood.web.Measures;

/** Keeps where trays stand when somebody sets them elsewhere. */
@Service
public class TrayMoving {

  private final Trays trays;
  private final TrayPlaces trayPlaces;
  private final BenchSpace space;
  private final Recorder recorder;
  private final Clock clock;

  TrayMoving(Trays trays, TrayPlaces trayPlaces, BenchSpace space, Recorder recorder, Clock clock) {
    this.trays = trays;
    this.trayPlaces = trayPlaces;
    this.space = space;
    this.recorder = recorder;
    this.clock = clock;
  }

  /**
   * Keeps that a tray stands elsewhere from a day on; where it stood before stays on record.
   *
   * @throws trialwood.record.Refused when the bench has no such place, another tray stands there,
   *     or the day lies ahead or before sticking
   */
  @Transactional
  public void move(
      UUID trayId, Bench bench, int place, LocalDate on, String reason, @Nullable UUID personId) {
    Tray tray = trays.take(trayId).orElseThrow();
    Optional<StandingTray> there =
        space.on(on).stream()
            .filter(other -> !other.trayId().equals(trayId))
            .filter(other -> Objects.equals(other.benchId(), bench.id()))
            .filter(other -> other.placeNumber() == place)
            .findFirst();
    Check.that()
        .holds(
            place <= bench.places(),
            "place",
            "Bench %s has %d places.".formatted(bench.code(), bench.places()))
        .holds(
            there.isEmpty(),
            "place",
            there.map(other -> "Tray %s stands there.".formatted(other.tray())).orElse(""))
        .holds(
            !on.isBefore(tray.stuckOn()),
            "on",
            "The tray was stuck on %s.".formatted(Measures.day(tray.stuckOn())))
        .holds(!on.isAfter(LocalDate.now(clock)), "on", "A move is recorded when it is made.")
        .orRefuse();
    trayPlaces.save(
        new TrayPlace(
            trayId, Objects.requireNonNull(bench.id()), place, on, reason, recorder.by(personId)));
  }
}
