package trialwood.analysis.guide;

import java.util.Comparator;
import org.junit.jupiter.api.Test;
import trialwood.analysis.mixed.AdjustedMeans;
import trialwood.analysis.mixed.Factor;
import trialwood.analysis.mixed.FixedEffect;
import trialwood.analysis.mixed.Heritability;
import trialwood.analysis.mixed.MixedFit;
import trialwood.analysis.mixed.MixedModel;
import trialwood.analysis.mixed.RandomEffect;
import trialwood.analysis.reference.DataFile;
import trialwood.analysis.reference.ReferenceFolder;

/** Mixed models, on open data; the first line of each file names its source. */
class MixedGuideTest {

  private static final Guide GUIDE = Guide.read();

  @Test
  void batches_of_dyestuff() {
    DataFile dyestuff = ReferenceFolder.ours().data("data-dyestuff.csv");
    MixedFit fit =
        MixedModel.of(dyestuff.numbers("yield"))
            .random(Factor.of("batch", dyestuff.text("batch")))
            .fit()
            .value()
            .orElseThrow();
    FixedEffect mean = fit.fixedEffects().get(0);
    RandomEffect best =
        fit.effects("batch").stream()
            .max(Comparator.comparingDouble(RandomEffect::effect))
            .orElseThrow();
    double reliability = Heritability.of(fit, "batch").value().orElseThrow().cullis();
    GUIDE.states(
        "variance between batches %.0f, inside one %.0f. The mean of all is %.1f ± %.1f. The best"
            + " batch was seen %.1f above it and is believed %.1f above it, standard error %.1f;"
            + " H² is %.2f.",
        fit.variance("batch"),
        fit.variance("Residual"),
        mean.estimate(),
        mean.se(),
        mean(dyestuff, "batch", best.level()) - mean.estimate(),
        best.effect(),
        best.se(),
        reliability);
  }

  @Test
  void barleys_over_sites_and_years() {
    DataFile barley = ReferenceFolder.ours().data("data-barley.csv");
    MixedFit fit =
        MixedModel.of(barley.numbers("yield"))
            .fixed(Factor.of("variety", barley.text("variety")))
            .random(Factor.of("site-season", barley.text("env")))
            .fit()
            .value()
            .orElseThrow();
    AdjustedMeans means = fit.means("variety");
    String best =
        means.levels().stream().max(Comparator.comparingDouble(means::mean)).orElseThrow();
    GUIDE.states(
        "variance between site-seasons %.0f, residual %.0f. The best barley has %.1f bushels an"
            + " acre, standard error %.1f; a difference of two barleys has one of %.1f.",
        fit.variance("site-season"),
        fit.variance("Residual"),
        means.mean(best),
        means.se(best),
        means.meanSed());
  }

  private static double mean(DataFile data, String factor, String level) {
    double[] values = data.numbers("yield");
    double sum = 0;
    int n = 0;
    for (int i = 0; i < values.length; i++) {
      if (data.text(factor).get(i).equals(level)) {
        sum += values[i];
        n++;
      }
    }
    return sum / n;
  }
}
