package trialwood.analysis.rate;

/**
 * Fisher's exact test of equal proportions: probabilities of the table, and of tables as far out,
 * with all four margins given. The two-sided p value sums the tables no likelier than the one found
 * (a part in 10⁷ forgives rounding). A probability below about 10⁻³⁰⁰ comes out as 0.
 *
 * <p>Source: Fisher, R. A. (1935) The logic of inductive inference. Journal of the Royal
 * Statistical Society 98, 39–82
 *
 * @param twoSided p value of "different"
 * @param greater p value of "the first proportion is greater"
 * @param less p value of "the first proportion is less"
 */
public record FisherTest(double twoSided, double greater, double less) {

  static FisherTest of(FourfoldTable table) {
    FourfoldLaw law = table.law(0);
    return new FisherTest(
        law.chanceOfNoLikelierThan(table.hits()),
        law.chanceOfAtLeast(table.hits()),
        law.chanceOfAtMost(table.hits()));
  }
}
