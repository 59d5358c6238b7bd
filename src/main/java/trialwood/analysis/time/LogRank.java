package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Covariance;
import trialwood.analysis.Refuse;

/**
 * Do groups have their events at the same time? On every day with an event the number in a group is
 * compared with its part of the plants at risk; days count with the weight S(t−)^ρ of the pooled
 * Kaplan–Meier curve. ρ = 0 is the log-rank test, ρ = 1 Peto and Peto's, which weighs early days
 * more.
 *
 * <p>Source: Mantel, N. (1966) Cancer Chemotherapy Reports 50, 163–170; Peto, R. and Peto, J.
 * (1972) Journal of the Royal Statistical Society A 135, 185–207; Harrington, D. P. and Fleming, T.
 * R. (1982) A class of rank test procedures for censored survival data. Biometrika 69, 553–566
 *
 * @param groups their names, in the order of the other parts
 * @param observed weighted number of events
 * @param expected weighted number if all groups were alike
 * @param covariance of observed − expected
 * @param test chi-square on one degree of freedom fewer than groups
 */
public record LogRank(
    List<String> groups,
    List<Double> observed,
    List<Double> expected,
    Covariance covariance,
    ChiSquareTest test) {

  /**
   * The test. Lacking for fewer than two groups, no event, and a group never at risk at an event.
   *
   * @param times plants of each group
   * @param rho 0 or above
   */
  public static Answer<LogRank> of(Map<String, List<KnownTime>> times, double rho) {
    Refuse.unless(rho >= 0 && Double.isFinite(rho), "The weight ρ is 0 or above, not %s.", rho);
    List<List<KnownTime>> groups = new ArrayList<>(times.values());
    List<KnownTime> all = groups.stream().flatMap(List::stream).toList();
    int k = groups.size();
    if (k < 2) {
      return Answer.lacking("A comparison needs at least two groups.");
    }
    if (!(KaplanMeier.of(all) instanceof Answer.Known<KaplanMeier> pooled)
        || pooled.answer().events() == 0) {
      return Answer.lacking("There has been no event.");
    }
    double[] observed = new double[k];
    double[] expected = new double[k];
    double[][] covariance = new double[k][k];
    double before = 1;
    for (KaplanMeier.Step step : pooled.answer().steps()) {
      double weight = Math.pow(before, rho);
      double n = step.atRisk();
      double d = step.events();
      double spread = n > 1 ? d * (n - d) / (n - 1) : 0;
      double[] atRisk = new double[k];
      for (int i = 0; i < k; i++) {
        for (KnownTime time : groups.get(i)) {
          atRisk[i] += time.day() >= step.day() ? 1 : 0;
          observed[i] += time.happened() && time.day() == step.day() ? weight : 0;
        }
        expected[i] += weight * d * atRisk[i] / n;
      }
      for (int i = 0; i < k; i++) {
        for (int j = 0; j < k; j++) {
          double own = i == j ? atRisk[i] / n : 0;
          covariance[i][j] += weight * weight * spread * (own - atRisk[i] / n * (atRisk[j] / n));
        }
      }
      before = step.survival();
    }
    return tested(new ArrayList<>(times.keySet()), observed, expected, covariance);
  }

  private static Answer<LogRank> tested(
      List<String> names, double[] observed, double[] expected, double[][] covariance) {
    int free = names.size() - 1;
    var matrix = new DMatrixRMaj(free, free);
    var excess = new DMatrixRMaj(free, 1);
    for (int i = 0; i < free; i++) {
      excess.set(i, observed[i] - expected[i]);
      for (int j = 0; j < free; j++) {
        matrix.set(i, j, covariance[i][j]);
      }
    }
    var solver = LinearSolverFactory_DDRM.symmPosDef(free);
    if (!solver.setA(matrix) || !(solver.quality() > 1e-12)) {
      return Answer.lacking("A group was never at risk beside the others.");
    }
    var solution = new DMatrixRMaj(free, 1);
    solver.solve(excess, solution);
    double statistic = 0;
    for (int i = 0; i < free; i++) {
      statistic += (observed[i] - expected[i]) * solution.get(i);
    }
    return Answer.known(
        new LogRank(
            List.copyOf(names),
            boxed(observed),
            boxed(expected),
            Covariance.of(covariance),
            ChiSquareTest.of(statistic, free)));
  }

  private static List<Double> boxed(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }
}
