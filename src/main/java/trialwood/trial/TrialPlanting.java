package trialwood.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.record.Check;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.record.Refused;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.unit.Identity;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
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
  private final JdbcClient jdbc;

  TrialPlanting(
      Trials trials,
      TrialEntries entries,
      TrialSites trialSites,
      Plots plots,
      Accessions accessions,
      Sites sites,
      Units units,
      Identity identity,
      Recorder recorder,
      JdbcClient jdbc) {
    this.trials = trials;
    this.entries = entries;
    this.trialSites = trialSites;
    this.plots = plots;
    this.accessions = accessions;
    this.sites = sites;
    this.units = units;
    this.identity = identity;
    this.recorder = recorder;
    this.jdbc = jdbc;
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
   * @throws Refused when one names a site or an accession that is not in the trial, a label or a
   *     place that is taken, or an entry that its block has already; then none is planted
   */
  @Transactional
  public void plant(UUID trialId, List<GivenPlot> given, @Nullable UUID personId) {
    Trial trial = trials.findById(trialId).orElseThrow();
    Map<UUID, TrialSite> bySite =
        trialSites.findByTrialIdOrderById(trialId).stream()
            .collect(Collectors.toMap(TrialSite::siteId, Function.identity()));
    Map<UUID, TrialEntry> byAccession =
        entries.findByTrialIdOrderById(trialId).stream()
            .collect(Collectors.toMap(TrialEntry::accessionId, Function.identity()));
    refuseWhatIsTaken(trial, given, bySite, byAccession);

    Recorded recorded = recorder.by(personId);
    List<Unit> stakes =
        units.saveAll(
            given.stream()
                .map(plot -> new Unit(UnitKind.PLOT, plot.label(), plot.siteId()))
                .toList());
    List<Plot> laid = new ArrayList<>();
    List<Tie> ties = new ArrayList<>();
    for (int i = 0; i < given.size(); i++) {
      GivenPlot plot = given.get(i);
      UUID unit = Objects.requireNonNull(stakes.get(i).id());
      TrialSite site = Objects.requireNonNull(bySite.get(plot.siteId()));
      UUID entry = Objects.requireNonNull(byAccession.get(plot.accessionId())).id();
      laid.add(
          new Plot(
              unit,
              Objects.requireNonNull(site.id()),
              Objects.requireNonNull(entry),
              plot.block(),
              plot.row(),
              plot.column(),
              plot.plants()));
      ties.add(
          new Tie(
              unit,
              plot.accessionId(),
              site.plantedOn(),
              null,
              "planted in trial " + trial.code(),
              null,
              site.plantedOn(),
              recorded));
    }
    units.flush();
    plots.saveAllAndFlush(laid);
    identity.say(ties);
  }

  private void refuseWhatIsTaken(
      Trial trial,
      List<GivenPlot> given,
      Map<UUID, TrialSite> bySite,
      Map<UUID, TrialEntry> byAccession) {
    Set<String> labels = labelsTaken(given);
    Set<List<Object>> inBlock = new HashSet<>();
    Map<List<Object>, String> onPlace = new HashMap<>();
    for (Plot plot : plots.findByTrialSiteIdIn(idsOf(bySite.values()))) {
      inBlock.add(List.of(plot.trialSiteId(), plot.block(), plot.entryId()));
      if (plot.rowNumber() != null && plot.columnNumber() != null) {
        onPlace.put(
            List.of(plot.trialSiteId(), plot.rowNumber(), plot.columnNumber()), "another plot");
      }
    }
    for (GivenPlot plot : given) {
      TrialSite site = bySite.get(plot.siteId());
      TrialEntry entry = byAccession.get(plot.accessionId());
      if (site == null) {
        throw new Refused(
            "site",
            "Plot %s: trial %s does not stand at that site.".formatted(plot.label(), trial.code()));
      }
      if (entry == null) {
        throw new Refused(
            "accession",
            "Plot %s: that accession is not an entry of trial %s."
                .formatted(plot.label(), trial.code()));
      }
      if (!labels.add(CodeKey.of(plot.label()))) {
        throw new Refused("plot", "The label %s is used already.".formatted(plot.label()));
      }
      if (!inBlock.add(
          List.of(
              Objects.requireNonNull(site.id()),
              plot.block(),
              Objects.requireNonNull(entry.id())))) {
        throw new Refused(
            "block",
            "Plot %s: block %d of the site has that entry already."
                .formatted(plot.label(), plot.block()));
      }
      if (plot.row() != null && plot.column() != null) {
        String other =
            onPlace.put(
                List.of(Objects.requireNonNull(site.id()), plot.row(), plot.column()),
                plot.label());
        if (other != null) {
          throw new Refused(
              "column",
              "Plot %s: row %d, column %d is taken by %s."
                  .formatted(plot.label(), plot.row(), plot.column(), other));
        }
      }
    }
  }

  private Set<String> labelsTaken(List<GivenPlot> given) {
    if (given.isEmpty()) {
      return new HashSet<>();
    }
    return new HashSet<>(
        jdbc.sql("select label_key from unit where label_key in (:keys)")
            .param("keys", given.stream().map(plot -> CodeKey.of(plot.label())).toList())
            .query(String.class)
            .list());
  }

  private static List<UUID> idsOf(Iterable<TrialSite> places) {
    List<UUID> ids = new ArrayList<>();
    places.forEach(place -> ids.add(Objects.requireNonNull(place.id())));
    return ids;
  }
}
