package trialwood.analysis.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.interfaces.decomposition.QRDecomposition;
import trialwood.analysis.Answer;
import trialwood.analysis.Refuse;
import trialwood.analysis.StudentBelief;

/**
 * Adjusted entry means over site-seasons by least squares on the additive model
 *
 * <pre>value = site-season + entry + residual</pre>
 *
 * The residual is the interaction of entry and site-season (with the plot error inside it), which
 * is the error that matters for a new place. Site-seasons are coded to sum to zero, so that the
 * coefficient of an entry is its mean averaged with equal weight over all site-seasons, whether it
 * stood in them or not; X = QR (Householder), Var(b) = s² R⁻¹R⁻ᵀ. Every row given weighs the same,
 * whatever its number of plots; several rows of one entry in one site-season are replicates.
 *
 * <p>Source: Searle, S. R., Speed, F. M. and Milliken, G. A. (1980) Population marginal means in
 * the linear model. The American Statistician 34, 216–221
 */
public final class EntryMeans {

  private final SortedMap<String, AdjustedMean> means;
  private final List<String> order;
  private final DMatrixRMaj covariance;
  private final double residualSd;
  private final int degreesOfFreedom;

  private EntryMeans(
      SortedMap<String, AdjustedMean> means,
      DMatrixRMaj covariance,
      double residualSd,
      int degreesOfFreedom) {
    this.means = means;
    this.order = List.copyOf(means.keySet());
    this.covariance = covariance;
    this.residualSd = residualSd;
    this.degreesOfFreedom = degreesOfFreedom;
  }

  /**
   * Fits the model. Lacking where entries share no site-season with the others, directly or through
   * common entries, so that no difference between the groups can be known; and where no residual
   * degree of freedom is left.
   *
   * @param cells in any order
   * @throws IllegalArgumentException if there is no cell
   */
  public static Answer<EntryMeans> of(Collection<TrialCell> cells) {
    Refuse.unless(!cells.isEmpty(), "The trial has no values.");
    Optional<String> apart = apart(cells);
    if (apart.isPresent()) {
      return Answer.lacking(apart.get());
    }
    List<String> entries = cells.stream().map(TrialCell::entry).distinct().sorted().toList();
    List<SiteSeason> places = cells.stream().map(TrialCell::at).distinct().sorted().toList();
    int coefficients = entries.size() + places.size() - 1;
    int df = cells.size() - coefficients;
    if (df < 1) {
      return Answer.lacking(
          "Too few values to judge the error: %d values for %d entries in %d site-seasons."
              .formatted(cells.size(), entries.size(), places.size()));
    }
    return Answer.known(fit(List.copyOf(cells), entries, places, df));
  }

  private static EntryMeans fit(
      List<TrialCell> cells, List<String> entries, List<SiteSeason> places, int df) {
    DMatrixRMaj design = new DMatrixRMaj(cells.size(), entries.size() + places.size() - 1);
    DMatrixRMaj values = new DMatrixRMaj(cells.size(), 1);
    for (int row = 0; row < cells.size(); row++) {
      TrialCell cell = cells.get(row);
      values.set(row, 0, cell.mean());
      design.set(row, entries.indexOf(cell.entry()), 1);
      int place = places.indexOf(cell.at());
      for (int column = 0; column < places.size() - 1; column++) {
        double code = place == places.size() - 1 ? -1 : place == column ? 1 : 0;
        design.set(row, entries.size() + column, code);
      }
    }
    QRDecomposition<DMatrixRMaj> qr = DecompositionFactory_DDRM.qr(design.numRows, design.numCols);
    if (!qr.decompose(design.copy())) {
      throw new IllegalStateException("The design could not be decomposed.");
    }
    DMatrixRMaj inverse = qr.getR(null, true).copy();
    CommonOps_DDRM.invert(inverse);
    DMatrixRMaj rotated = new DMatrixRMaj(design.numCols, 1);
    CommonOps_DDRM.multTransA(qr.getQ(null, true), values, rotated);
    DMatrixRMaj estimates = new DMatrixRMaj(design.numCols, 1);
    CommonOps_DDRM.mult(inverse, rotated, estimates);

    DMatrixRMaj residuals = values.copy();
    CommonOps_DDRM.multAdd(-1, design, estimates, residuals);
    double variance = CommonOps_DDRM.dot(residuals, residuals) / df;
    DMatrixRMaj covariance = new DMatrixRMaj(design.numCols, design.numCols);
    CommonOps_DDRM.multTransB(variance, inverse, inverse, covariance);

    var means = new TreeMap<String, AdjustedMean>();
    for (int i = 0; i < entries.size(); i++) {
      String entry = entries.get(i);
      int own = (int) cells.stream().filter(cell -> cell.entry().equals(entry)).count();
      double se = Math.sqrt(covariance.get(i, i));
      means.put(
          entry, new AdjustedMean(entry, own, new StudentBelief(estimates.get(i, 0), se, df)));
    }
    return new EntryMeans(means, covariance, Math.sqrt(variance), df);
  }

  /** One line an entry, by name. */
  public List<AdjustedMean> means() {
    return List.copyOf(means.values());
  }

  /**
   * @throws IllegalArgumentException if no entry has that name
   */
  public AdjustedMean of(String entry) {
    AdjustedMean mean = means.get(entry);
    if (mean == null) {
      throw new IllegalArgumentException(entry + " has no value in this trial.");
    }
    return mean;
  }

  /** Residual standard deviation: entry × site-season interaction with the plot error in it. */
  public double residualSd() {
    return residualSd;
  }

  /** Values less entries less site-seasons plus one. */
  public int degreesOfFreedom() {
    return degreesOfFreedom;
  }

  /**
   * Adjusted mean of {@code entry} less that of {@code other}, with the standard error of the
   * difference.
   *
   * @throws IllegalArgumentException if one of them is not in the trial
   */
  public StudentBelief difference(String entry, String other) {
    double estimate = of(entry).mean().estimate() - of(other).mean().estimate();
    int i = order.indexOf(entry);
    int j = order.indexOf(other);
    double variance = covariance.get(i, i) + covariance.get(j, j) - 2 * covariance.get(i, j);
    return new StudentBelief(estimate, Math.sqrt(Math.max(0, variance)), degreesOfFreedom);
  }

  /** Why some entries cannot be compared with others; empty where all can. */
  static Optional<String> apart(Collection<TrialCell> cells) {
    List<SortedSet<String>> groups = connectedEntries(cells);
    return groups.size() < 2
        ? Optional.empty()
        : Optional.of(
            "%s and %s never stood in one site-season, nor beside a common check: their means cannot be compared."
                .formatted(named(groups.get(0)), named(groups.get(1))));
  }

  /** Entries grouped by whether a chain of shared site-seasons leads from one to another. */
  private static List<SortedSet<String>> connectedEntries(Collection<TrialCell> cells) {
    Map<SiteSeason, SortedSet<String>> beside = new LinkedHashMap<>();
    for (TrialCell cell : cells) {
      beside.computeIfAbsent(cell.at(), at -> new TreeSet<>()).add(cell.entry());
    }
    List<SortedSet<String>> groups = new ArrayList<>();
    for (SortedSet<String> neighbours : beside.values()) {
      SortedSet<String> joined = new TreeSet<>(neighbours);
      groups.removeIf(
          group -> {
            boolean touches = group.stream().anyMatch(neighbours::contains);
            if (touches) {
              joined.addAll(group);
            }
            return touches;
          });
      groups.add(joined);
    }
    return groups;
  }

  private static String named(SortedSet<String> entries) {
    return String.join(", ", entries);
  }
}
