package trialwood.analysis.trial;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import trialwood.analysis.Answer;
import trialwood.analysis.mixed.Factor;
import trialwood.analysis.mixed.MixedFit;
import trialwood.analysis.mixed.MixedModel;

/**
 * The mixed model of a trial whose plots stand for several seasons,
 *
 * <pre>
 * value = site-season + entry + block(site) + plot + entry×site + entry×season + entry×site-season
 *         + residual
 * </pre>
 *
 * Site-seasons are fixed, the terms from block on random. Entries are fixed where their means are
 * asked for, and random where they are shrunken. A term that the layout cannot tell from another is
 * left out by name; what it stands for is then inside the one named with it.
 *
 * <p>Source: Patterson, H. D. and Thompson, R. (1971) Biometrika 58, 545–554 for the variances;
 * Piepho, H.-P., Büchse, A. and Emrich, K. (2003) A hitchhiker's guide to mixed models for
 * randomized experiments. Journal of Agronomy and Crop Science 189, 310–322 for the terms.
 */
public final class TrialModel {

  private static final String ENTRY = "entry";
  private static final int LEAST_ENTRIES_TO_SHRINK = 5;

  private TrialModel() {}

  /**
   * Fits the model. Lacking for a single site or a single entry, for entries that no chain of
   * shared site-seasons connects, and where the values carry no such model; the least squares of
   * {@link EntryMeans} may still answer then.
   */
  public static Answer<TrialFit> of(Collection<PlotValue> values) {
    List<PlotValue> plots = List.copyOf(values);
    if (plots.stream().map(plot -> plot.at().site()).distinct().count() < 2) {
      return Answer.lacking("One site only: what changes from site to site cannot be judged.");
    }
    Optional<String> apart = EntryMeans.apart(cells(plots));
    if (apart.isPresent()) {
      return Answer.lacking(apart.get());
    }
    Terms terms = Terms.of(plots);
    MixedModel base =
        MixedModel.of(plots.stream().mapToDouble(PlotValue::value).toArray())
            .fixed(terms.siteSeason());
    MixedModel fixed = base.fixed(terms.entry());
    var leftOut = new ArrayList<TrialFit.LeftOut>();
    var kept = new ArrayList<Factor>();
    for (Factor term : terms.random()) {
      Optional<String> trouble = fixed.trouble(term);
      if (trouble.isPresent()) {
        leftOut.add(new TrialFit.LeftOut(term.name(), trouble.get()));
      } else {
        fixed = fixed.random(term);
        kept.add(term);
      }
    }
    if (kept.stream().noneMatch(term -> term.name().startsWith(ENTRY))
        && leftOut.stream().noneMatch(term -> term.why().contains("residual"))) {
      return Answer.lacking("No term tells how entries change from site to site.");
    }
    Answer<MixedFit> shrunken = shrunken(base, terms.entry(), kept);
    int df = terms.degreesOfFreedom(kept);
    return fixed
        .fit()
        .map(fit -> new TrialFit(fit, shrunken, List.copyOf(leftOut), plots.size(), df));
  }

  private static Answer<MixedFit> shrunken(MixedModel base, Factor entry, List<Factor> terms) {
    if (entry.levels().size() < LEAST_ENTRIES_TO_SHRINK) {
      return Answer.lacking(
          "%d entries are too few to judge how entries vary.".formatted(entry.levels().size()));
    }
    MixedModel model = base.random(entry);
    for (Factor term : terms) {
      model = model.random(term);
    }
    return model.fit();
  }

  private static List<TrialCell> cells(List<PlotValue> plots) {
    return plots.stream()
        .map(plot -> new TrialCell(plot.entry(), plot.at(), plot.value(), 1))
        .toList();
  }

  /** The classifications of the plots. */
  private record Terms(
      Factor site, Factor siteSeason, Factor entry, Factor entrySite, List<Factor> random) {

    /** Of the interaction that is the error of a difference over sites, one at the least. */
    int degreesOfFreedom(List<Factor> kept) {
      Factor place = kept.contains(entrySite) ? site : siteSeason;
      int cells = Factor.crossed(entry, place).levels().size();
      return Math.max(1, cells - entry.levels().size() - place.levels().size() + 1);
    }

    static Terms of(List<PlotValue> plots) {
      Factor entry = Factor.of(ENTRY, plots.stream().map(PlotValue::entry).toList());
      Factor site = Factor.of("site", plots.stream().map(plot -> plot.at().site()).toList());
      Factor season =
          Factor.of("season", plots.stream().map(plot -> "" + plot.at().season()).toList());
      Factor siteSeason =
          Factor.of("site-season", plots.stream().map(plot -> plot.at().toString()).toList());
      Factor block =
          Factor.crossed(site, Factor.of("block", plots.stream().map(PlotValue::block).toList()));
      Factor plot = Factor.of("plot", plots.stream().map(PlotValue::plot).toList());
      Factor entrySite = Factor.crossed(entry, site);
      return new Terms(
          site,
          siteSeason,
          entry,
          entrySite,
          List.of(
              block,
              entrySite,
              Factor.crossed(entry, season),
              Factor.crossed(entry, siteSeason),
              plot));
    }
  }
}
