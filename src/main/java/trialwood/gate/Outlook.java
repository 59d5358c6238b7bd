package trialwood.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.rate.FurtherTrays;
import trialwood.analysis.rate.FurtherTrays.Chance;
import trialwood.analysis.rate.RateDifference;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.evidence.Evidence;
import trialwood.evidence.InPercent;

/**
 * What further trays would settle of a criterion that the trays so far leave open: the truth is
 * drawn from what they leave to believe, further trays are drawn under it, and the criterion is
 * asked again of all of them together, as of one run.
 *
 * @param cuttings of each further tray: as many as the trays so far hold on average
 * @param chances of a settled answer, either way, with few further trays
 * @param enough the fewest that settle it in {@value #WANTED} of the futures; none if even {@value
 *     FurtherTrays#MOST_TRAYS} do not
 */
public record Outlook(
    Criterion criterion, int cuttings, List<Chance> chances, @Nullable Chance enough) {

  private static final double WANTED = 0.8;
  private static final List<Integer> FEW = List.of(1, 2, 3, 6);

  /** Where the criterion is open and its evidence is a share over trays. */
  public static Optional<Outlook> of(Finding finding, boolean outstanding) {
    return trays(finding).map(soFar -> of(finding, soFar, outstanding));
  }

  /** Whether further trays can be asked about. */
  public static boolean isOpen(Finding finding) {
    return trays(finding).isPresent();
  }

  private static Optional<TrayPosterior> trays(Finding finding) {
    if (finding.verdict() != Verdict.NOT_SETTLED
        || !(finding.evidence().belief() instanceof InPercent percent)) {
      return Optional.empty();
    }
    if (percent.fraction() instanceof RateDifference difference) {
      return Optional.of(difference.candidate());
    }
    return percent.fraction() instanceof TrayPosterior share
        ? Optional.of(share)
        : Optional.empty();
  }

  private static Outlook of(Finding finding, TrayPosterior soFar, boolean outstanding) {
    int cuttings =
        (int) Math.round(soFar.trays().stream().mapToInt(TrayCount::stuck).average().orElseThrow());
    FurtherTrays further =
        FurtherTrays.after(
            soFar,
            cuttings,
            (trays, share) -> {
              Verdict verdict =
                  finding
                      .criterion()
                      .judge(with(finding.evidence(), trays, share), outstanding)
                      .verdict();
              return verdict == Verdict.MEETS || verdict == Verdict.FALLS_SHORT;
            });
    return new Outlook(
        finding.criterion(),
        cuttings,
        FEW.stream().map(further::chanceWith).toList(),
        fewest(further));
  }

  /** By halving, for more trays settle more often, save for ripples of the counts. */
  private static @Nullable Chance fewest(FurtherTrays further) {
    if (further.chanceWith(FurtherTrays.MOST_TRAYS).settled() < WANTED) {
      return null;
    }
    int tooFew = 0;
    int enough = FurtherTrays.MOST_TRAYS;
    while (enough - tooFew > 1) {
      int middle = (tooFew + enough) / 2;
      if (further.chanceWith(middle).settled() < WANTED) {
        tooFew = middle;
      } else {
        enough = middle;
      }
    }
    return further.chanceWith(enough);
  }

  /** The evidence with further trays in it. */
  private static Evidence with(Evidence now, List<TrayCount> trays, Belief share) {
    double value = share(trays);
    Belief belief = share;
    if (now.belief() instanceof InPercent percent
        && percent.fraction() instanceof RateDifference difference) {
      value -= share(difference.check().trays());
      belief = new AgainstCheck(share, difference.check());
    }
    Evidence later =
        now.having(
            100 * value,
            trays.stream().mapToInt(TrayCount::stuck).sum(),
            trays.size(),
            new InPercent(belief));
    List<Evidence> occasions = new ArrayList<>(now.occasions());
    IntStream.range(0, occasions.size())
        .filter(i -> Objects.equals(occasions.get(i).counted(), now.counted()))
        .findFirst()
        .ifPresent(i -> occasions.set(i, later));
    return later.onOccasions(occasions);
  }

  private static double share(List<TrayCount> trays) {
    return (double) trays.stream().mapToInt(TrayCount::rooted).sum()
        / trays.stream().mapToInt(TrayCount::stuck).sum();
  }

  /** The candidate after further trays, less the check as it was counted. */
  private record AgainstCheck(Belief candidate, TrayPosterior check) implements Belief {

    @Override
    public double mean() {
      return candidate.mean() - check.mean();
    }

    @Override
    public double chanceAtLeast(double line) {
      return RateDifference.chanceAtLeast(candidate, check, line);
    }

    @Override
    public double quantile(double probability) {
      return Quantile.solve(line -> 1 - chanceAtLeast(line), -1, 1, probability);
    }
  }
}
