package trialwood.trial.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Interval;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.SiteSeason;
import trialwood.crop.Trait;
import trialwood.trial.Direction;
import trialwood.trial.SeasonMean;
import trialwood.trial.TraitSeasons;
import trialwood.web.IntervalPicture;

/**
 * One trait of one trial: entries down, site-seasons across, and what each entry shows against the
 * check.
 *
 * @param columns the site-seasons in order
 * @param rows one an entry
 * @param scale the common axis of the pictures; none where nothing can be pictured
 */
record TraitTable(List<SiteSeason> columns, List<Row> rows, @Nullable IntervalPicture scale) {

  /**
   * An entry.
   *
   * @param cells in the order of the columns; empty where there is no mean
   * @param adjusted its mean as if it had stood in every site-season
   * @param compared with the check; none for the check itself, and where the two never met
   * @param chance that it is truly better than the check
   */
  record Row(
      TrialBook.EntryRow entry,
      List<Optional<SeasonMean>> cells,
      AcrossSites.@Nullable Mean adjusted,
      @Nullable CheckComparison compared,
      @Nullable IntervalPicture picture,
      @Nullable Double chance) {}

  private static final double LEVEL = 0.95;

  static TraitTable of(
      Trait trait,
      TraitSeasons seasons,
      AcrossSites across,
      List<TrialBook.EntryRow> entries,
      String check) {
    Optional<Better> better = Direction.of(trait);
    List<SiteSeason> columns = seasons.planned();
    Map<String, Map<SiteSeason, SeasonMean>> means =
        seasons.means().stream()
            .filter(mean -> mean.mean() != null)
            .collect(
                Collectors.groupingBy(
                    SeasonMean::accession,
                    Collectors.toMap(
                        mean -> new SiteSeason(mean.site(), mean.season()), Function.identity())));
    List<Row> rows = new ArrayList<>();
    for (TrialBook.EntryRow entry : entries) {
      Map<SiteSeason, SeasonMean> own = means.getOrDefault(entry.code(), Map.of());
      CheckComparison compared =
          entry.code().equals(check)
              ? null
              : CheckComparison.of(
                      seasons.cells(), columns, entry.code(), check, better.orElse(Better.HIGHER))
                  .value()
                  .orElse(null);
      rows.add(
          new Row(
              entry,
              columns.stream().map(at -> Optional.ofNullable(own.get(at))).toList(),
              across.means().get(entry.code()),
              compared,
              null,
              compared == null || better.isEmpty()
                  ? null
                  : compared.chanceBetter().value().orElse(null)));
    }
    return new TraitTable(columns, rows, null).pictured(trait);
  }

  private TraitTable pictured(Trait trait) {
    // as far as any site-season went: one unsteady entry must not shrink the others to a dot
    double reach =
        rows.stream()
            .map(Row::compared)
            .filter(Objects::nonNull)
            .flatMap(compared -> compared.siteSeasons().stream())
            .mapToDouble(one -> Math.abs(one.difference()))
            .max()
            .orElse(0);
    if (reach <= 0) {
      return this;
    }
    IntervalPicture axis =
        IntervalPicture.on(
            new IntervalPicture.Scale(
                -reach,
                reach,
                Math.max(1, trait.decimals()),
                Optional.ofNullable(trait.unit()).orElse("")));
    IntervalPicture line =
        Direction.of(trait).filter(better -> better == Better.LOWER).isPresent()
            ? axis.stayingUnder(0)
            : axis.reaching(0);
    return new TraitTable(columns, rows.stream().map(row -> pictured(row, line)).toList(), line);
  }

  private static Row pictured(Row row, IntervalPicture line) {
    CheckComparison compared = row.compared();
    if (compared == null) {
      return row;
    }
    IntervalPicture shown = line.showing(compared.average());
    if (compared.onAverage().value().isPresent()) {
      Interval interval = interval(compared);
      shown = shown.between(interval.low(), interval.high());
    }
    return new Row(row.entry(), row.cells(), row.adjusted(), compared, shown, row.chance());
  }

  private static Interval interval(CheckComparison compared) {
    return compared
        .onAverage()
        .value()
        .map(belief -> belief.interval(LEVEL))
        .orElseGet(() -> at(compared.average()));
  }

  private static Interval at(double value) {
    return new Interval(value, value, LEVEL);
  }
}
