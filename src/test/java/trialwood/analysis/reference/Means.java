package trialwood.analysis.reference;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.AdjustedMeans;
import trialwood.analysis.means.AnovaTable;
import trialwood.analysis.means.CheckDifferences;
import trialwood.analysis.means.EqualSpread;
import trialwood.analysis.means.Groups;
import trialwood.analysis.means.KruskalWallis;
import trialwood.analysis.means.LinearModel;
import trialwood.analysis.means.PairwiseDifferences;
import trialwood.analysis.means.TwoStages;

/** Means in blocks and their comparisons: 05, 14 and the plain linear models of 06. */
final class Means implements Family {

  private final MeansFits fits = new MeansFits();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    Map<String, Function<Row, Object>> methods = new HashMap<>();
    methods.put("group", this::group);
    for (String name :
        List.of(
            "anova_oneway",
            "anova_rcbd",
            "anova_latin_square",
            "anova_twoway.type1",
            "anova_lm",
            "lm_anova",
            "nist_anova")) {
      methods.put(name, row -> anova(row, fits.model(row).sequential()));
    }
    for (String name : List.of("anova_rcbd.adjusted", "anova_twoway.type2")) {
      methods.put(name, row -> anova(row, fits.model(row).adjusted()));
    }
    methods.put(
        "anova_twoway.type3",
        row ->
            fits.model(row).averagesOfCells().value().map(t -> anova(row, t)).orElse(Double.NaN));
    methods.put("adjusted_means", row -> mean(row, fits.means(row), row.key()));
    methods.put("lm_blue", row -> mean(row, fits.means(row), row.key()));
    methods.put("pairwise", this::pair);
    methods.put("lsd", this::lsd);
    methods.put("tukey", this::tukey);
    methods.put("dunnett", this::dunnett);
    methods.put("contrast", this::contrast);
    methods.put("lsmeans", this::marginal);
    methods.put("lsmeans_additive", this::marginal);
    methods.put("lsmeans_diff", this::marginalDifference);
    methods.put("two_stage.stage1", this::firstStage);
    methods.put("two_stage.stage2", this::secondStage);
    methods.put("kruskal_wallis", this::kruskalWallis);
    methods.put("bartlett", this::bartlett);
    methods.put("levene.mean", row -> levene(row, EqualSpread.levene(fits.groups(row))));
    methods.put("levene.median", row -> levene(row, EqualSpread.brownForsythe(fits.groups(row))));
    methods.replaceAll((name, method) -> row -> orNaN(method, row));
    return methods;
  }

  private static Object orNaN(Function<Row, Object> method, Row row) {
    try {
      return method.apply(row);
    } catch (MeansFits.NoAnswer e) {
      return Double.NaN;
    }
  }

  private Object group(Row row) {
    Groups.Summary summary =
        fits.groups(row).summaries().stream()
            .filter(line -> line.level().equals(row.key()))
            .findAny()
            .orElseThrow();
    return switch (row.quantity()) {
      case "n" -> summary.n();
      case "mean", "raw_mean" -> summary.mean().value().orElse(Double.NaN);
      case "sd" -> summary.sd().value().orElse(Double.NaN);
      case "median" -> summary.median().value().orElse(Double.NaN);
      default -> throw new UnknownRow(row);
    };
  }

  private Object anova(Row row, AnovaTable table) {
    if (row.key().isEmpty()) {
      return ofModel(row, table);
    }
    if (List.of("residual", "residuals", "within").contains(row.key().toLowerCase())) {
      return switch (row.quantity()) {
        case "df" -> table.residualDf();
        case "ss" -> table.residualSs();
        case "ms" -> table.residualMs();
        default -> throw new UnknownRow(row);
      };
    }
    return ofLine(row, table.line(fits.term(row)));
  }

  private static Object ofLine(Row row, AnovaTable.Line line) {
    return switch (row.quantity()) {
      case "df" -> line.df();
      case "ss" -> line.ss();
      case "ms" -> line.ms();
      case "F" -> line.f();
      case "p" -> line.p();
      default -> throw new UnknownRow(row);
    };
  }

  private Object ofModel(Row row, AnovaTable table) {
    LinearModel model = fits.model(row);
    return switch (row.quantity()) {
      case "F", "p" -> ofLine(row, table.lines().get(0));
      case "ss_total" -> model.totalSs();
      case "r_squared" -> model.rSquared();
      case "residual_sd" -> model.residualSd();
      case "grand_mean" -> model.grandMean();
      case "cv_percent" -> model.cvPercent().value().orElse(Double.NaN);
      default -> throw new UnknownRow(row);
    };
  }

  private static Object mean(Row row, AdjustedMeans means, String level) {
    if (row.quantity().equals("df")) {
      return means.residualDf();
    }
    return means.of(level).value().map(mean -> belief(row, mean)).orElse(Double.NaN);
  }

  private static Object belief(Row row, StudentBelief belief) {
    return switch (row.quantity()) {
      case "mean", "difference", "estimate" -> belief.estimate();
      case "se", "sed" -> belief.standardError();
      case "df" -> belief.degreesOfFreedom();
      case "lower" -> belief.interval(row.number("conf")).low();
      case "upper" -> belief.interval(row.number("conf")).high();
      default -> throw new UnknownRow(row);
    };
  }

  private Object pair(Row row) {
    PairwiseDifferences.Pair pair = fits.pair(row);
    return switch (row.quantity()) {
      case "difference", "sed", "se" -> belief(row, pair.difference());
      case "t" -> pair.t();
      case "p_unadjusted" -> pair.p();
      case "p_bonferroni" -> pair.bonferroni();
      case "p_holm" -> pair.holm();
      case "p_bh" -> pair.falseDiscoveryRate();
      default -> throw new UnknownRow(row);
    };
  }

  private Object lsd(Row row) {
    PairwiseDifferences pairs = fits.pairs(row);
    Answer<Double> common = pairs.commonStandardError();
    return switch (row.quantity()) {
      case "sed_common" -> common.value().orElse(Double.NaN);
      case "lsd_common" ->
          common
              .value()
              .map(se -> pairs.pairs().get(0).leastSignificantDifference(row.number("alpha")))
              .orElse(Double.NaN);
      case "lsd" -> fits.pair(row).leastSignificantDifference(row.number("alpha"));
      default -> throw new UnknownRow(row);
    };
  }

  private Object tukey(Row row) {
    PairwiseDifferences pairs = fits.pairs(row);
    return switch (row.quantity()) {
      case "q_crit" -> pairs.tukeyQuantile(1 - row.number("alpha"));
      case "p_adj" -> pairs.tukeyP(fits.pair(row));
      case "lower" -> pairs.tukeyInterval(fits.pair(row), 1 - row.number("alpha")).low();
      case "upper" -> pairs.tukeyInterval(fits.pair(row), 1 - row.number("alpha")).high();
      default -> throw new UnknownRow(row);
    };
  }

  private Object dunnett(Row row) {
    CheckDifferences check = fits.againstCheck(row);
    return switch (row.quantity()) {
      case "d_crit_two_sided" -> check.distribution().twoSidedQuantile(1 - row.number("alpha"));
      case "d_crit_one_sided" -> check.distribution().oneSidedQuantile(1 - row.number("alpha"));
      case "difference", "se" -> belief(row, check.entry(row.key()).difference());
      case "t" -> check.entry(row.key()).t();
      case "p_two_sided" -> check.twoSidedP(check.entry(row.key()));
      case "p_greater" -> check.aboveP(check.entry(row.key()));
      case "p_less" -> check.belowP(check.entry(row.key()));
      case "lower" -> check.interval(check.entry(row.key()), 1 - row.number("alpha")).low();
      case "upper" -> check.interval(check.entry(row.key()), 1 - row.number("alpha")).high();
      default -> throw new UnknownRow(row);
    };
  }

  private Object contrast(Row row) {
    return row.quantity().equals("coefficients")
        ? NamedContrast.named(row, fits.means(row).names()).text()
        : NamedContrast.of(row, fits.contrast(row));
  }

  /** Keys such as {@code A=high} and {@code A=high,B=low}: roles and levels. */
  private Object marginal(Row row) {
    String[] parts = row.key().split(",(?=[AB]=)");
    String[] factors =
        Arrays.stream(parts).map(part -> row.input(part.split("=", 2)[0])).toArray(String[]::new);
    String level = String.join(":", Arrays.stream(parts).map(p -> p.split("=", 2)[1]).toList());
    return mean(row, fits.model(row).means(factors), level);
  }

  /** Keys such as {@code A:high vs low}. */
  private Object marginalDifference(Row row) {
    String[] role = row.key().split(":", 2);
    String[] levels = role[1].split(" vs ", 2);
    PairwiseDifferences pairs = fits.model(row).means(row.input(role[0])).pairs();
    PairwiseDifferences.Pair pair = pairs.pair(levels[0], levels[1]);
    return switch (row.quantity()) {
      case "p_tukey" -> pairs.tukeyP(pair);
      case "t" -> pair.t();
      default -> belief(row, pair.difference());
    };
  }

  private Object firstStage(Row row) {
    String[] key = row.key().split("@", 2);
    TwoStages.Environment stage = fits.stages(row).environments().get(key[key.length - 1]);
    if (stage == null) {
      return Double.NaN;
    }
    return switch (row.quantity()) {
      case "error_ms" -> stage.model().sequential().residualMs();
      case "error_df" -> stage.model().residualDf();
      default -> mean(row, stage.means(), key[0]);
    };
  }

  private Object secondStage(Row row) {
    return mean(row, fits.stages(row).overall().means(row.input("entry")), row.key());
  }

  private Object kruskalWallis(Row row) {
    KruskalWallis test = MeansFits.orNone(KruskalWallis.of(fits.groups(row)));
    return switch (row.quantity()) {
      case "H" -> test.h();
      case "df" -> test.df();
      case "p" -> test.p();
      default -> throw new UnknownRow(row);
    };
  }

  private Object bartlett(Row row) {
    EqualSpread.ByChiSquare test = MeansFits.orNone(EqualSpread.bartlett(fits.groups(row)));
    return switch (row.quantity()) {
      case "K2" -> test.statistic();
      case "df" -> test.df();
      case "p" -> test.p();
      default -> throw new UnknownRow(row);
    };
  }

  private static Object levene(Row row, Answer<EqualSpread.ByF> answer) {
    EqualSpread.ByF test = MeansFits.orNone(answer);
    return switch (row.quantity()) {
      case "F" -> test.f();
      case "df1" -> test.df1();
      case "df2" -> test.df2();
      case "p" -> test.p();
      default -> throw new UnknownRow(row);
    };
  }
}
