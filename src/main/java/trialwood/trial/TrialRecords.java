package trialwood.trial;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.record.Refused;

/** Takes what was seen on the plots of a trial, and what befell its sites. */
@Service
public class TrialRecords {

  private final Plots plots;
  private final TrialSites trialSites;
  private final SiteEvents events;
  private final Traits traits;
  private final Observations observations;
  private final Recorder recorder;
  private final Clock clock;
  private final JdbcClient jdbc;

  TrialRecords(
      Plots plots,
      TrialSites trialSites,
      SiteEvents events,
      Traits traits,
      Observations observations,
      Recorder recorder,
      Clock clock,
      JdbcClient jdbc) {
    this.plots = plots;
    this.trialSites = trialSites;
    this.events = events;
    this.traits = traits;
    this.observations = observations;
    this.recorder = recorder;
    this.clock = clock;
    this.jdbc = jdbc;
  }

  /**
   * @throws Refused when the value is impossible, the trait is not taken on plots, the day lies
   *     before planting or ahead, or the plot has a record of the trait for that day
   */
  @Transactional(noRollbackFor = Refused.class) // what is refused has stored nothing
  public void observe(PlotReading seen) {
    Plot plot = plots.findById(seen.plotId()).orElseThrow();
    TrialSite site = trialSites.findById(plot.trialSiteId()).orElseThrow();
    Trait trait = traits.findById(seen.traitId()).orElseThrow();
    Check.that()
        .holds(
            trait.takenOn().contains("plot"),
            "value",
            "%s is not taken on plots.".formatted(trait.name()))
        .holds(
            !seen.on().isBefore(site.plantedOn()),
            "on",
            "The plot was planted later, on %s.".formatted(site.plantedOn()))
        .holds(
            !seen.on().isAfter(LocalDate.now(clock)), "on", "Nothing can be seen tomorrow already.")
        .holds(
            !isRecorded(seen),
            "value",
            "%s is on record for that day already.".formatted(trait.name()))
        .orRefuse();
    observations.save(
        new Observation(
            seen.plotId(),
            trait,
            seen.on(),
            seen.reading(),
            seen.note(),
            recorder.by(seen.personId())));
  }

  /**
   * Puts a reading in the place of an earlier one of the same plot, trait and day; both stay
   * readable.
   *
   * @throws Refused without a reason, when the value is impossible, or when the earlier one was
   *     replaced before
   */
  @Transactional
  public void correct(UUID earlierId, Reading reading, String reason, @Nullable UUID personId) {
    Observation earlier = observations.findById(earlierId).orElseThrow();
    Trait trait = traits.findById(earlier.traitId()).orElseThrow();
    Check.that()
        .holds(
            !observations.existsBySupersedesId(earlierId),
            "value",
            "Somebody has corrected this value already. Open the sheet afresh.")
        .orRefuse();
    observations.save(
        new Observation(
                earlier.unitId(),
                trait,
                earlier.onDate(),
                reading,
                earlier.note(),
                recorder.by(personId))
            .insteadOf(earlier, reason));
  }

  private boolean isRecorded(PlotReading seen) {
    List<Observation> onPlot = observations.findByUnitIdOrderByOnDate(seen.plotId());
    Set<UUID> replaced =
        onPlot.stream()
            .map(Observation::supersedesId)
            .filter(Objects::nonNull)
            .collect(Collectors.toSet());
    return onPlot.stream()
        .filter(one -> one.traitId().equals(seen.traitId()) && one.onDate().equals(seen.on()))
        .anyMatch(one -> !replaced.contains(one.id()));
  }

  /**
   * @return the event
   * @throws Refused when the code is taken, the day lies ahead, or a plot it names stands elsewhere
   */
  @Transactional
  public UUID report(NewSiteEvent event) {
    Check.that()
        .holds(
            !events.existsByCode(event.code().strip()),
            "event",
            "The code %s is taken.".formatted(event.code().strip()))
        .holds(
            !event.on().isAfter(LocalDate.now(clock)),
            "on",
            "Report an event once it has happened.")
        .holds(
            stand(event.plots(), event.siteId()), "plots", "A plot that is named stands elsewhere.")
        .orRefuse();
    SiteEvent reported = new SiteEvent(event, recorder.by(event.personId()));
    return Objects.requireNonNull(events.save(reported).id());
  }

  private boolean stand(Set<UUID> plotIds, UUID siteId) {
    return plotIds.isEmpty()
        || jdbc.sql(
                    """
                    select count(*) from plot p join trial_site ts on ts.id = p.trial_site_id
                    where p.unit_id in (:plots) and ts.site_id = :site
                    """)
                .param("plots", plotIds)
                .param("site", siteId)
                .query(Integer.class)
                .single()
            == plotIds.size();
  }
}
