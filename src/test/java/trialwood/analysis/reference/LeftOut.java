package trialwood.analysis.reference;

import java.util.Map;

/** Methods of the reference files that this application has no use for, each with its reason. */
final class LeftOut {

  private static final String SPLIT_PLOTS = "no trial here splits its plots";

  /** By the name of the method in the files. */
  static final Map<String, String> REASONS =
      Map.ofEntries(
          Map.entry("anova_splitplot", SPLIT_PLOTS),
          Map.entry("splitplot_means", SPLIT_PLOTS),
          Map.entry("splitplot_sed", SPLIT_PLOTS),
          Map.entry("gge", "the pictures of stability here come from AMMI"),
          Map.entry("logistic_growth", "shrubs in pots are measured too seldom for an S-curve"),
          Map.entry("friedman", "values in blocks are compared by their means"),
          Map.entry("welch_anova", "entries of one trial share one error"),
          Map.entry("francis_kannenberg", "superseded here by ecovalence and superiority"),
          Map.entry("nassar_huehn", "ranks over sites are shown as they are"),
          Map.entry("lme_varIdent", "an optional row; a site's own error is not fitted"),
          Map.entry("blue_anova.satterthwaite", "optional: degrees of freedom vary with software"),
          Map.entry("blue_anova.kenward_roger", "optional: degrees of freedom vary with software"),
          Map.entry(
              "r_convertColor", "known to be wrong: its white point is mistyped in that release"));

  private LeftOut() {}
}
