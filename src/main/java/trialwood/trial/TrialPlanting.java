package trialwood.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.record.Check;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.unit.Identity;
import trialwood.unit.Units;

/** Plans a trial and plants it: plots become units, tied to their entries from planting on. */
@Service
public class TrialPlanting {

  private final Trials trials;
  private final TrialEntries entries;
  private final TrialSites trialSites;
  private final Plots plots;
  private final Accessions accessions;
  private final Sites sites;
  private final Units units;
  private final Identity identity;
  private final Recorder recorder;

  TrialPlanting(
      Trials trials,
      TrialEntries entries,
      TrialSites trialSites,
      Plots plots,
      Accessions accessions,
      Sites sites,
      Units units,
      Identity identity,
      Recorder recorder) {
    this.trials = trials;
    this.entries = entries;
    this.trialSites = trialSites;
    this.plots = plots;
    this.accessions = accessions;
    this.sites = sites;
    this.units = units;
    this.identity = identity;
    this.recorder = recorder;
  }

  /**
   * @return the trial, without entries and sites as yet
   * @throws Refused when the code is taken or the plan impossible
   */
  @Transactional
  public UUID plan(NewTrial trial) {
    Check.that()
        .holds(
            !trials.existsByCode(trial.code().strip()),
            "trial",
            "The code %s is taken.".formatted(trial.code().strip()))
        .orRefuse();
    return Objects.requireNonNull(trials.save(new Trial(trial, recorder.by(null))).id());
  }

  /**
   * @throws Refused when the accession is in the trial already, or of another crop
   */
  @Transactional
  public void enter(UUID trialId, UUID accessionId, EntryRole role) {
    Trial trial = trials.findById(trialId).orElseThrow();
    Accession accession = accessions.findById(accessionId).orElseThrow();
    Check.that()
        .holds(
            !entries.existsByTrialIdAndAccessionId(trialId, accessionId),
            "accession",
            "%s is in trial %s already.".formatted(accession.code(), trial.code()))
        .holds(
            accession.cropId().equals(trial.cropId()),
            "accession",
            "%s is of another crop.".formatted(accession.code()))
        .orRefuse();
    entries.save(new TrialEntry(trialId, accessionId, role));
  }

  /**
   * @throws Refused when the trial stands at the site already
   */
  @Transactional
  public void standAt(UUID trialId, UUID siteId, LocalDate plantedOn) {
    Check.that()
        .holds(
            !trialSites.existsByTrialIdAndSiteId(trialId, siteId),
            "site",
            "The trial stands at this site already.")
        .orRefuse();
    trialSites.save(new TrialSite(trialId, siteId, plantedOn));
  }

  /**
   * Draws the layout of every site from the trial's seed and plants it. Plots are labelled in
   * walking order: {@code T1-HB-01}.
   *
   * @throws Refused when the trial has no seed, no entries or no sites, or was planted before
   */
  @Transactional
  public void layOut(UUID trialId, @Nullable UUID personId) {
    Trial trial = trials.findById(trialId).orElseThrow();
    List<TrialEntry> standing = entries.findByTrialIdOrderById(trialId);
    List<TrialSite> places = trialSites.findByTrialIdOrderById(trialId);
    Long seed = trial.seed();
    Check.that()
        .holds(seed != null, "seed", "Give a number to draw the layout from.")
        .holds(standing.size() >= 2, "entries", "A trial compares at least two entries.")
        .holds(!places.isEmpty(), "sites", "Say where the trial is planted.")
        .orRefuse();
    Map<UUID, String> codes =
        sites.findAllById(places.stream().map(TrialSite::siteId).toList()).stream()
            .collect(Collectors.toMap(Site::id, Site::code));
    List<Layout> fields =
        Layout.draw(places.size(), standing.size(), trial.blocks(), Objects.requireNonNull(seed));
    List<GivenPlot> drawn = new ArrayList<>();
    for (int at = 0; at < places.size(); at++) {
      UUID site = places.get(at).siteId();
      int nth = 0;
      for (Layout.Place place : fields.get(at).places()) {
        nth++;
        drawn.add(
            new GivenPlot(
                "%s-%s-%02d".formatted(trial.code(), codes.get(site), nth),
                site,
                standing.get(place.entry()).accessionId(),
                place.block(),
                place.row(),
                place.column(),
                trial.plantsPerPlot()));
      }
    }
    plant(trialId, drawn, personId);
  }

  /**
   * Plants plots as they are given.
   *
   * @throws Refused when one cannot stand there; then none is planted
   */
  @Transactional
  public void plant(UUID trialId, List<GivenPlot> given, @Nullable UUID personId) {
    Planting planting = open(trialId);
    given.forEach(planting::add);
    plant(planting, personId);
  }

  /** Opens a trial for plots that come one by one; what stands there already is read once. */
  @Transactional(readOnly = true)
  public Planting open(UUID trialId) {
    List<TrialSite> places = trialSites.findByTrialIdOrderById(trialId);
    return new Planting(
        trials.findById(trialId).orElseThrow().code(),
        places,
        entries.findByTrialIdOrderById(trialId),
        plots.findByTrialSiteIdIn(places.stream().map(TrialSite::id).toList()),
        units::existsByLabelKey);
  }

  /** Plants all plots that were added. */
  @Transactional
  public void plant(Planting planting, @Nullable UUID personId) {
    Recorded recorded = recorder.by(personId);
    List<Planting.Staked> staked = planting.staked();
    units.saveAllAndFlush(staked.stream().map(Planting.Staked::stake).toList());
    plots.saveAllAndFlush(staked.stream().map(Planting.Staked::plot).toList());
    identity.say(staked.stream().map(one -> one.tie(planting.trial(), recorded)).toList());
  }
}
