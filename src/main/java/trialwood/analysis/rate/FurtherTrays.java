package trialwood.analysis.rate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentHashMap;
import trialwood.analysis.Answer;
import trialwood.analysis.Belief;
import trialwood.analysis.Refuse;

/**
 * Would further trays settle a question that the trays so far leave open? The truth (p, ρ) is drawn
 * from the posterior, further trays are drawn under it, and the question is put again to all trays
 * together; the share of {@value #DRAWS} futures that settle it is the answer. The seed is fixed,
 * so the same records always give the same answer, and its simulation error is given.
 *
 * <p>Source: Raiffa, H. and Schlaifer, R. (1961) Applied Statistical Decision Theory. Harvard,
 * chapter 4, for preposterior analysis; Spiegelhalter, D. J., Abrams, K. R. and Myles, J. P. (2004)
 * Bayesian Approaches to Clinical Trials. Wiley, section 6.5
 */
public final class FurtherTrays {

  public static final int DRAWS = 2000;
  public static final int MOST_TRAYS = 20;
  private static final int LARGEST_TRAY = 500;
  private static final long SEED = 20_260_624;

  /** The question. */
  public interface Criterion {

    /**
     * Whether the question is settled, either way; asked from several threads at once.
     *
     * @param trays all of them, further ones last
     * @param share what they leave to believe of p
     */
    boolean isSettledBy(List<TrayCount> trays, Belief share);
  }

  /**
   * How often the question is settled after some further trays.
   *
   * @param trays how many further trays
   * @param settled share of the futures, 0 to 1
   * @param simulationError standard error of {@code settled} by the number of draws
   */
  public record Chance(int trays, double settled, double simulationError) {

    static Chance of(int trays, long settled) {
      double smoothed = (settled + 0.5) / (DRAWS + 1);
      return new Chance(
          trays, (double) settled / DRAWS, Math.sqrt(smoothed * (1 - smoothed) / DRAWS));
    }
  }

  private final List<TrayCount> trays;
  private final int cuttingsPerTray;
  private final Criterion criterion;
  private final TrayGrid grid;
  private final List<int[]> futures;
  private final Map<Integer, Chance> known = new ConcurrentHashMap<>();

  private FurtherTrays(
      List<TrayCount> trays, TrayPrior prior, int cuttingsPerTray, Criterion criterion) {
    this.trays = List.copyOf(trays);
    this.cuttingsPerTray = cuttingsPerTray;
    this.criterion = criterion;
    this.grid = new TrayGrid(trays, prior, cuttingsPerTray);
    this.futures = new ArrayList<>(DRAWS);
    var random = new SplittableRandom(SEED);
    for (int draw = 0; draw < DRAWS; draw++) {
      futures.add(grid.draw(random, MOST_TRAYS));
    }
  }

  /**
   * @param soFar what the trays so far say
   * @param cuttingsPerTray of each further tray, 1 to {@value #LARGEST_TRAY}
   * @throws IllegalArgumentException if a tray holds less or more
   */
  public static FurtherTrays after(TrayPosterior soFar, int cuttingsPerTray, Criterion criterion) {
    Refuse.unless(
        cuttingsPerTray > 0 && cuttingsPerTray <= LARGEST_TRAY,
        "A further tray holds 1 to %d cuttings, not %d.",
        LARGEST_TRAY,
        cuttingsPerTray);
    return new FurtherTrays(soFar.trays(), soFar.prior(), cuttingsPerTray, criterion);
  }

  /**
   * How often so many further trays settle it.
   *
   * @param further 1 to {@value #MOST_TRAYS}
   */
  public Chance chanceWith(int further) {
    Refuse.unless(
        further > 0 && further <= MOST_TRAYS, "Ask about 1 to %d further trays.", MOST_TRAYS);
    return known.computeIfAbsent(further, this::counted);
  }

  private Chance counted(int further) {
    long settled =
        futures.parallelStream()
            .filter(
                future -> criterion.isSettledBy(with(future, further), grid.after(future, further)))
            .count();
    return Chance.of(further, settled);
  }

  /**
   * The smallest number of further trays that settles it in the wanted share of futures; lacking if
   * up to {@value #MOST_TRAYS} do not.
   *
   * @param wanted 0 &lt; wanted &lt; 1
   */
  public Answer<Chance> fewest(double wanted) {
    Refuse.unlessInside(wanted, "share of futures wanted");
    for (int further = 1; further <= MOST_TRAYS; further++) {
      Chance chance = chanceWith(further);
      if (chance.settled() >= wanted) {
        return Answer.known(chance);
      }
    }
    return Answer.lacking(
        "Even %d further trays would not settle it often enough.".formatted(MOST_TRAYS));
  }

  private List<TrayCount> with(int[] future, int further) {
    var all = new ArrayList<TrayCount>(trays);
    for (int i = 0; i < further; i++) {
      all.add(new TrayCount(future[i], cuttingsPerTray));
    }
    return all;
  }
}
