package trialwood.analysis.rate;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import trialwood.analysis.Answer;
import trialwood.analysis.Covariance;
import trialwood.analysis.Refuse;

/**
 * Logistic regression of tray counts, xᵢ ~ Binomial(nᵢ, pᵢ) with logit pᵢ = row i of the design
 * times the coefficients, by iteratively re-weighted least squares: the weights nᵢpᵢ(1 − pᵢ), each
 * step solved by QR.
 *
 * <p>Source: Nelder, J. A. and Wedderburn, R. W. M. (1972) Generalized linear models. Journal of
 * the Royal Statistical Society A 135, 370–384; McCullagh, P. and Nelder, J. A. (1989) Generalized
 * Linear Models, 2nd ed. Chapman and Hall
 *
 * @param coefficients on the logit scale, one for each column of the design
 * @param covariance of the coefficients, if the counts are binomial
 * @param deviance 2 Σ (x log x/np + (n − x) log (n − x)/(n − np))
 * @param pearson X² = Σ (x − np)²/(np(1 − p))
 * @param logLikelihood binomial coefficients included
 * @param residualDegreesOfFreedom trays less coefficients
 */
public record LogitModel(
    List<Double> coefficients,
    Covariance covariance,
    double deviance,
    double pearson,
    double logLikelihood,
    int residualDegreesOfFreedom) {

  private static final int STEPS = 100;

  /** Past this logit a proportion is 0 or 1 to the eye and the fit runs away. */
  private static final double RUNAWAY = 30;

  /**
   * Lacking where the design's columns depend on each other, or where a treatment has all or
   * nothing rooted: then no finite coefficient is best.
   *
   * @param trays the counts
   * @param design one row a tray, one column a coefficient
   * @throws IllegalArgumentException if rows and trays do not match
   */
  public static Answer<LogitModel> of(List<TrayCount> trays, double[][] design) {
    int n = trays.size();
    Refuse.unless(n > 0 && design.length == n, "Each tray needs its row of the design.");
    int k = design[0].length;
    if (k > n) {
      return Answer.lacking("There are fewer trays than coefficients.");
    }
    var x = new DMatrixRMaj(design);
    var beta = new DMatrixRMaj(k, 1);
    double[] logits = new double[n];
    for (int i = 0; i < n; i++) {
      TrayCount tray = trays.get(i);
      logits[i] = Math.log((tray.rooted() + 0.5) / (tray.stuck() - tray.rooted() + 0.5));
    }
    double last = Double.NaN;
    for (int step = 0; step < STEPS; step++) {
      if (!weightedStep(trays, x, logits, beta)) {
        return Answer.lacking("The columns of the design cannot be told apart.");
      }
      var fitted = new DMatrixRMaj(n, 1);
      CommonOps_DDRM.mult(x, beta, fitted);
      for (int i = 0; i < n; i++) {
        logits[i] = fitted.get(i);
        if (!(Math.abs(logits[i]) < RUNAWAY)) {
          return Answer.lacking("All or nothing rooted in a part of the trays.");
        }
      }
      double deviance = deviance(trays, logits);
      if (Math.abs(deviance - last) <= 1e-11 * (1 + deviance)) {
        return Answer.known(fitted(trays, x, logits, beta));
      }
      last = deviance;
    }
    return Answer.lacking("The fit did not settle.");
  }

  /** Minus twice the log-likelihood plus twice the number of coefficients. */
  public double aic() {
    return 2 * (coefficients.size() - logLikelihood);
  }

  /** How much more the trays vary than the binomial allows: X² ÷ residual degrees of freedom. */
  public Answer<Double> phi() {
    return residualDegreesOfFreedom > 0
        ? Answer.known(pearson / residualDegreesOfFreedom)
        : Answer.lacking("The spread between trays needs two trays of one treatment.");
  }

  private static boolean weightedStep(
      List<TrayCount> trays, DMatrixRMaj x, double[] logits, DMatrixRMaj beta) {
    int n = trays.size();
    var left = x.copy();
    var right = new DMatrixRMaj(n, 1);
    for (int i = 0; i < n; i++) {
      double p = share(logits[i]);
      double perLogit = p * share(-logits[i]);
      double root = Math.sqrt(trays.get(i).stuck() * perLogit);
      for (int j = 0; j < x.numCols; j++) {
        left.set(i, j, root * x.get(i, j));
      }
      right.set(i, root * (logits[i] + (trays.get(i).share() - p) / perLogit));
    }
    var solver = LinearSolverFactory_DDRM.leastSquares(n, x.numCols);
    if (!solver.setA(left) || !(solver.quality() > 1e-12)) {
      return false;
    }
    solver.solve(right, beta);
    return true;
  }

  private static LogitModel fitted(
      List<TrayCount> trays, DMatrixRMaj x, double[] logits, DMatrixRMaj beta) {
    int k = x.numCols;
    var information = new DMatrixRMaj(k, k);
    double pearson = 0;
    double logLikelihood = 0;
    for (int i = 0; i < logits.length; i++) {
      TrayCount tray = trays.get(i);
      double p = share(logits[i]);
      double variance = tray.stuck() * p * share(-logits[i]);
      pearson += Math.pow(tray.rooted() - tray.stuck() * p, 2) / variance;
      logLikelihood += BinomialDistribution.of(tray.stuck(), p).logProbability(tray.rooted());
      for (int a = 0; a < k; a++) {
        for (int b = 0; b < k; b++) {
          information.add(a, b, variance * x.get(i, a) * x.get(i, b));
        }
      }
    }
    var inverse = new DMatrixRMaj(k, k);
    CommonOps_DDRM.invertSPD(information, inverse);
    double[][] covariance = new double[k][k];
    for (int a = 0; a < k; a++) {
      for (int b = 0; b < k; b++) {
        covariance[a][b] = inverse.get(a, b);
      }
    }
    return new LogitModel(
        Arrays.stream(beta.data).boxed().toList(),
        Covariance.of(covariance),
        deviance(trays, logits),
        pearson,
        logLikelihood,
        logits.length - k);
  }

  private static double deviance(List<TrayCount> trays, double[] logits) {
    double sum = 0;
    for (int i = 0; i < logits.length; i++) {
      TrayCount tray = trays.get(i);
      sum += part(tray.rooted(), tray.stuck() * share(logits[i]));
      sum += part(tray.stuck() - tray.rooted(), tray.stuck() * share(-logits[i]));
    }
    return 2 * sum;
  }

  private static double part(int found, double expected) {
    return found == 0 ? 0 : found * Math.log(found / expected);
  }

  /** The proportion of a logit. */
  static double share(double logit) {
    return 1 / (1 + Math.exp(-logit));
  }
}
