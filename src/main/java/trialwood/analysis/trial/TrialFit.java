package trialwood.analysis.trial;

import java.util.ArrayList;
import java.util.List;
import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.mixed.AdjustedMeans;
import trialwood.analysis.mixed.Heritability;
import trialwood.analysis.mixed.MixedFit;
import trialwood.analysis.mixed.RandomEffect;
import trialwood.analysis.mixed.VarianceComponent;

/**
 * A trial fitted by {@link TrialModel}.
 *
 * @param fixed the fit with entries fixed: adjusted means
 * @param shrunken the fit with entries random: shrunken means; lacking where they cannot be
 * @param leftOut terms the layout cannot carry
 * @param values how many plot values
 * @param degreesOfFreedom of entry × site, or where that is not in the model of entry ×
 *     site-season: what chances of a difference rest on
 */
public record TrialFit(
    MixedFit fixed,
    Answer<MixedFit> shrunken,
    List<LeftOut> leftOut,
    int values,
    int degreesOfFreedom) {

  private static final String ENTRY = "entry";

  /** A term that is not in the model, and why. */
  public record LeftOut(String term, String why) {}

  /**
   * An entry's mean, drawn towards the mean of all entries by as much as its record is unsure.
   *
   * @param effect above or below the mean of the entries, in the unit of the trait
   * @param se of effect less truth
   * @param reliability 0 to 1
   * @param amongBest chance to be truly among the best three, by simulation with a fixed seed
   */
  public record ShrunkenMean(
      String entry, double effect, double se, double reliability, double amongBest) {}

  /** Means as if every entry had stood in every site-season. */
  public AdjustedMeans means() {
    return fixed.means(ENTRY);
  }

  /** The entry's adjusted mean less the check's. */
  public double difference(String entry, String check) {
    return means().mean(entry) - means().mean(check);
  }

  /**
   * Chance that the entry is better than the check on average over such sites and seasons, by
   * Student's t: the error of a difference is the interaction of entry and site, and no better
   * known than that term has degrees of freedom.
   */
  public double chanceBetter(String entry, String check, Better better) {
    return chance(entry, check, better, 0);
  }

  /** Chance that the entry would be better than the check in a site-season not yet seen. */
  public double chanceBetterInNewSiteSeason(String entry, String check, Better better) {
    double interaction =
        fixed.variances().stream()
            .filter(component -> component.term().startsWith(ENTRY + ":"))
            .mapToDouble(VarianceComponent::variance)
            .sum();
    return chance(entry, check, better, 2 * interaction);
  }

  private double chance(String entry, String check, Better better, double further) {
    double sed = means().sed(entry, check);
    double error = Math.sqrt(sed * sed + further);
    return better.chance(new StudentBelief(difference(entry, check), error, degreesOfFreedom));
  }

  /** How much of the differences between shrunken means is the entries' own. */
  public Answer<Heritability> heritability() {
    return shrunken instanceof Answer.Known<MixedFit> known
        ? Heritability.of(known.answer(), ENTRY)
        : Answer.lacking(shrunken.lack().orElseThrow());
  }

  /** Every entry, the best first. */
  public Answer<List<ShrunkenMean>> shrunkenMeans(Better better) {
    return shrunken.map(fit -> ranked(fit, better));
  }

  private static List<ShrunkenMean> ranked(MixedFit fit, Better better) {
    List<RandomEffect> effects = fit.effects(ENTRY);
    double[] amongBest = new BestThree(fit.errorCovariance(ENTRY), effects, better).chances();
    var means = new ArrayList<ShrunkenMean>();
    for (int i = 0; i < amongBest.length; i++) {
      RandomEffect effect = effects.get(i);
      means.add(
          new ShrunkenMean(
              effect.level(), effect.effect(), effect.se(), effect.reliability(), amongBest[i]));
    }
    means.sort(
        (one, other) -> Double.compare(better.gain(other.effect()), better.gain(one.effect())));
    return List.copyOf(means);
  }
}
