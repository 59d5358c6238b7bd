package trialwood.analysis.rate;

import java.util.Arrays;

/**
 * The number of hits X in the first row of a 2 × 2 table whose margins are given, when the true
 * odds ratio is ψ: Fisher's non-central hypergeometric distribution, Pr(X = x) ∝ C(n, x) C(n′, m −
 * x) ψˣ.
 *
 * <p>Worked outwards from the mode by the ratio of neighbours until a term vanishes against it, so
 * that large counts cost no more than their spread and nothing overflows.
 *
 * <p>Source: Fisher, R. A. (1935) The logic of inductive inference. Journal of the Royal
 * Statistical Society 98, 39–82; Liao, J. G. and Rosen, O. (2001) Fast and stable algorithms for
 * computing and sampling from the noncentral hypergeometric distribution. The American Statistician
 * 55, 366–369
 */
final class FourfoldLaw {

  private static final double VANISHED = 1e-300;

  /** Number of hits that belongs to the first term. */
  private final int first;

  /** Probabilities relative to the mode's. */
  private final double[] terms;

  private final double total;

  private FourfoldLaw(int first, double[] terms) {
    this.first = first;
    this.terms = terms;
    this.total = Arrays.stream(terms).sum();
  }

  static FourfoldLaw of(FourfoldTable table, double logOdds) {
    int least = least(table);
    int most = most(table);
    int mode = mode(table, logOdds, least, most);
    double[] up = new double[16];
    double[] down = new double[16];
    int ups = 0;
    int downs = 0;
    double term = 1;
    for (int x = mode; x < most; x++) {
      term *= Math.exp(logRatio(table, x) + logOdds);
      if (term < VANISHED) {
        break;
      }
      up = ups == up.length ? Arrays.copyOf(up, 2 * ups) : up;
      up[ups++] = term;
    }
    term = 1;
    for (int x = mode; x > least; x--) {
      term /= Math.exp(logRatio(table, x - 1) + logOdds);
      if (term < VANISHED) {
        break;
      }
      down = downs == down.length ? Arrays.copyOf(down, 2 * downs) : down;
      down[downs++] = term;
    }
    double[] terms = new double[downs + 1 + ups];
    for (int i = 0; i < downs; i++) {
      terms[downs - 1 - i] = down[i];
    }
    terms[downs] = 1;
    System.arraycopy(up, 0, terms, downs + 1, ups);
    return new FourfoldLaw(mode - downs, terms);
  }

  /** Fewest hits the margins allow. */
  static int least(FourfoldTable table) {
    return (int) Math.max(0L, (long) table.hits() + table.otherHits() - table.otherN());
  }

  /** Most hits the margins allow. */
  static int most(FourfoldTable table) {
    return (int) Math.min(table.n(), (long) table.hits() + table.otherHits());
  }

  double chanceOfAtLeast(int hits) {
    double sum = 0;
    for (int i = terms.length - 1; i >= Math.max(0, hits - first); i--) {
      sum += terms[i];
    }
    return Math.min(1, sum / total);
  }

  double chanceOfAtMost(int hits) {
    double sum = 0;
    for (int i = 0; i <= Math.min(terms.length - 1, hits - first); i++) {
      sum += terms[i];
    }
    return Math.min(1, sum / total);
  }

  /** Probability of all numbers no likelier than this one, apart from rounding. */
  double chanceOfNoLikelierThan(int hits) {
    boolean vanishes = hits < first || hits >= first + terms.length;
    double line = vanishes ? 0 : terms[hits - first] * (1 + 1e-7);
    return Math.min(1, Arrays.stream(terms).filter(term -> term <= line).sum() / total);
  }

  double mean() {
    double sum = 0;
    for (int i = 0; i < terms.length; i++) {
      sum += terms[i] * i;
    }
    return first + sum / total;
  }

  /** log of Pr(x + 1) ÷ Pr(x) at ψ = 1; falls as x grows. */
  private static double logRatio(FourfoldTable table, int x) {
    double allHits = (double) table.hits() + table.otherHits();
    return Math.log(
        ((double) table.n() - x)
            * (allHits - x)
            / ((x + 1.0) * (table.otherN() - allHits + x + 1.0)));
  }

  /** The first x after which the terms fall, by bisection. */
  private static int mode(FourfoldTable table, double logOdds, int least, int most) {
    int low = least;
    int high = most;
    while (low < high) {
      int middle = low + (high - low) / 2;
      if (logRatio(table, middle) + logOdds > 0) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
