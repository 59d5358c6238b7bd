package trialwood.trial;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.record.CodeKey;
import trialwood.record.Recorded;
import trialwood.record.Refused;
import trialwood.unit.Tie;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;

/**
 * The plots of one trial on their way into the ground. Each is held against what stands there and
 * against those added before it, so that a thousand plots cost a thousand looks and not a million.
 */
public final class Planting {

  /** A plot whose stake is cut but not yet in the ground. */
  record Staked(Unit stake, TrialSite site, UUID entryId, GivenPlot given) {

    Plot plot() {
      return new Plot(
          Objects.requireNonNull(stake.id()), Objects.requireNonNull(site.id()), entryId, given);
    }

    Tie tie(String trial, Recorded recorded) {
      return new Tie(
          Objects.requireNonNull(stake.id()),
          given.accessionId(),
          site.plantedOn(),
          null,
          "planted in trial " + trial,
          null,
          site.plantedOn(),
          recorded);
    }
  }

  private record InBlock(@Nullable UUID siteId, int block, UUID entryId) {}

  private record OnGround(@Nullable UUID siteId, int row, int column) {}

  private final String trial;
  private final Map<UUID, TrialSite> bySite;
  private final Map<UUID, UUID> entryOf;
  private final Predicate<String> isTaken;
  private final Set<String> labels = new HashSet<>();
  private final Set<InBlock> inBlock = new HashSet<>();
  private final Map<OnGround, String> onGround = new HashMap<>();
  private final List<Staked> staked = new ArrayList<>();

  /**
   * @param isTaken whether a label, by its key, is on record
   */
  Planting(
      String trial,
      List<TrialSite> sites,
      List<TrialEntry> entries,
      List<Plot> standing,
      Predicate<String> isTaken) {
    this.trial = trial;
    this.bySite = sites.stream().collect(Collectors.toMap(TrialSite::siteId, Function.identity()));
    this.entryOf =
        entries.stream()
            .collect(
                Collectors.toMap(
                    TrialEntry::accessionId, entry -> Objects.requireNonNull(entry.id())));
    this.isTaken = isTaken;
    for (Plot plot : standing) {
      inBlock.add(new InBlock(plot.trialSiteId(), plot.block(), plot.entryId()));
      if (plot.rowNumber() != null && plot.columnNumber() != null) {
        onGround.put(
            new OnGround(plot.trialSiteId(), plot.rowNumber(), plot.columnNumber()),
            "another plot");
      }
    }
  }

  /**
   * @throws Refused when the plot names a site or an accession that is not in the trial, a label or
   *     a place that is taken, or an entry that its block has already
   */
  public void add(GivenPlot plot) {
    TrialSite site = bySite.get(plot.siteId());
    UUID entry = entryOf.get(plot.accessionId());
    if (site == null) {
      throw refused(plot, "site", "trial %s does not stand at that site.".formatted(trial));
    }
    if (entry == null) {
      throw refused(
          plot, "accession", "that accession is not an entry of trial %s.".formatted(trial));
    }
    String label = CodeKey.of(plot.label());
    InBlock once = new InBlock(site.id(), plot.block(), entry);
    if (labels.contains(label) || isTaken.test(label)) {
      throw new Refused("plot", "The label %s is used already.".formatted(plot.label()));
    }
    if (inBlock.contains(once)) {
      throw refused(
          plot, "block", "block %d of the site has that entry already.".formatted(plot.block()));
    }
    if (plot.row() != null && plot.column() != null) {
      OnGround place = new OnGround(site.id(), plot.row(), plot.column());
      String other = onGround.get(place);
      if (other != null) {
        throw refused(
            plot,
            "column",
            "row %d, column %d is taken by %s.".formatted(plot.row(), plot.column(), other));
      }
      onGround.put(place, plot.label());
    }
    labels.add(label);
    inBlock.add(once);
    staked.add(new Staked(new Unit(UnitKind.PLOT, plot.label(), plot.siteId()), site, entry, plot));
  }

  private static Refused refused(GivenPlot plot, String field, String why) {
    return new Refused(field, "Plot %s: %s".formatted(plot.label(), why));
  }

  String trial() {
    return trial;
  }

  List<Staked> staked() {
    return List.copyOf(staked);
  }
}
