package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;
import java.util.random.RandomGenerator;
import trialwood.analysis.Belief;
import trialwood.analysis.Quantile;
import trialwood.analysis.Refuse;

/**
 * The posterior of a batch's p and ρ on a fixed grid, which learns a further tray of a given size
 * by adding one line of a table. For simulation: thousands of possible futures in a second.
 */
final class TrayGrid {

  private static final int SHARE_POINTS = 96;
  private static final int LIKENESS_POINTS = 24;

  /** Log mass this far below the peak counts for nothing. */
  private static final double NEGLIGIBLE = 30;

  private static final int CELLS = SHARE_POINTS * LIKENESS_POINTS;
  private static final double[] SHARE_WEIGHTS = Chebyshev.weights(SHARE_POINTS);
  private static final double[] LIKENESS_WEIGHTS = Chebyshev.weights(LIKENESS_POINTS);

  private final double low;
  private final double high;
  private final double[] shares;

  /** Log posterior mass of each cell, in rows of equal ρ. */
  private final double[] logMass;

  /** Log probability of each number rooted of a further tray, in each cell. */
  private final double[][] logCount;

  private final double[] cumulative;

  TrayGrid(List<TrayCount> trays, TrayPrior prior, int cuttingsPerTray) {
    JointDensity joint = new JointDensity(trays, prior);
    JointDensity.Window window = joint.window();
    this.low = window.shareLow();
    this.high = window.shareHigh();
    double[] v = Chebyshev.points(low, high, SHARE_POINTS);
    double[] w = Chebyshev.points(window.likenessLow(), window.likenessHigh(), LIKENESS_POINTS);
    this.shares = Arrays.stream(v).map(JointDensity::ofAngle).toArray();
    this.logMass = new double[CELLS];
    this.logCount = new double[cuttingsPerTray + 1][CELLS];
    double[][] log = joint.logOn(v, w);
    for (int i = 0; i < LIKENESS_POINTS; i++) {
      double rho = JointDensity.ofAngle(w[i]);
      for (int k = 0; k < SHARE_POINTS; k++) {
        int cell = i * SHARE_POINTS + k;
        logMass[cell] = log[i][k] + Math.log(SHARE_WEIGHTS[k] * LIKENESS_WEIGHTS[i]);
        double rest = JointDensity.ofAngle(Math.PI / 2 - v[k]);
        fillCounts(cell, shares[k] * (1 - rho), rest * (1 - rho), rho);
      }
    }
    this.cumulative = cumulative(logMass);
  }

  /** Beta-binomial log probabilities, each from the one before. */
  private void fillCounts(int cell, double p, double q, double rho) {
    int n = logCount.length - 1;
    double log = 0;
    for (int j = 0; j < n; j++) {
      log += Math.log((q + j * rho) / (1 - rho + j * rho));
    }
    for (int x = 0; x <= n; x++) {
      logCount[x][cell] = log;
      if (x < n) {
        log += Math.log((n - x) / (x + 1.0) * (p + x * rho) / (q + (n - x - 1) * rho));
      }
    }
  }

  private static double[] cumulative(double[] logMass) {
    double peak = Arrays.stream(logMass).max().orElseThrow();
    double[] cumulative = new double[logMass.length];
    double sum = 0;
    for (int cell = 0; cell < logMass.length; cell++) {
      sum += Math.exp(logMass[cell] - peak);
      cumulative[cell] = sum;
    }
    for (int cell = 0; cell < cumulative.length; cell++) {
      cumulative[cell] /= sum;
    }
    return cumulative;
  }

  /** A truth from the posterior, and what that many further trays would show under it. */
  int[] draw(RandomGenerator random, int furtherTrays) {
    int found = Arrays.binarySearch(cumulative, random.nextDouble());
    int cell = Math.min(CELLS - 1, found < 0 ? -found - 1 : found);
    int[] rooted = new int[furtherTrays];
    for (int tray = 0; tray < furtherTrays; tray++) {
      double left = random.nextDouble();
      int x = -1;
      while (left >= 0 && x < logCount.length - 1) {
        x++;
        left -= Math.exp(logCount[x][cell]);
      }
      rooted[tray] = x;
    }
    return rooted;
  }

  /** What would be believed of p after the first so many of those further trays. */
  Belief after(int[] rooted, int furtherTrays) {
    double[] log = logMass.clone();
    for (int tray = 0; tray < furtherTrays; tray++) {
      double[] line = logCount[rooted[tray]];
      for (int cell = 0; cell < CELLS; cell++) {
        log[cell] += line[cell];
      }
    }
    double peak = Arrays.stream(log).max().orElseThrow();
    double[] mass = new double[SHARE_POINTS];
    double total = 0;
    double first = 0;
    for (int cell = 0; cell < CELLS; cell++) {
      if (log[cell] > peak - NEGLIGIBLE) {
        double part = Math.exp(log[cell] - peak);
        mass[cell % SHARE_POINTS] += part;
        total += part;
        first += part * shares[cell % SHARE_POINTS];
      }
    }
    for (int k = 0; k < SHARE_POINTS; k++) {
      mass[k] /= total * SHARE_WEIGHTS[k] * (high - low);
    }
    return new OnGrid(first / total, new Chebyshev(low, high, mass));
  }

  /** A belief of p as a density of its angle. */
  private record OnGrid(double mean, Chebyshev density) implements Belief {

    @Override
    public double chanceAtLeast(double line) {
      Refuse.unless(!Double.isNaN(line), "The line to reach must be a number.");
      if (line <= 0) {
        return 1;
      }
      double below = line >= 1 ? 1 : density.integralTo(Math.asin(Math.sqrt(line)));
      return Math.min(1, Math.max(0, 1 - below));
    }

    @Override
    public double quantile(double probability) {
      Refuse.unlessInside(probability, "probability of a quantile");
      return JointDensity.ofAngle(
          Quantile.solve(density::integralTo, density.low(), density.high(), probability));
    }
  }
}
