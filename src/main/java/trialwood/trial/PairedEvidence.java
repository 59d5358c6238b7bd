package trialwood.trial;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.trial.Better;
import trialwood.analysis.trial.CheckComparison;
import trialwood.analysis.trial.SiteSeason;
import trialwood.crop.Trait;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.web.Measures;

/**
 * Turns one entry beside its check into evidence.
 *
 * @param codes of the trials, by their ids
 */
record PairedEvidence(Trait trait, Pairing pair, Map<UUID, String> codes, Measures measures) {

  /** Peak of the susceptible check, in percent, from which on there was something to resist. */
  static final double PRESSURE = 20;

  private static final double LEVEL = 0.95;

  /** The difference on average over sites, and how sure it is. */
  Evidence difference() {
    CheckComparison compared = comparison(Better.HIGHER);
    EvidenceBuilder evidence =
        begin(
            compared.average(),
            unit(),
            "Difference of site-season means, averaged by site, then over sites that weigh equally;"
                + " the error is how the sites differ.");
    compared.onAverage().value().ifPresent(belief -> evidence.believing(belief, LEVEL));
    compared.onAverage().lack().ifPresent(evidence::remarking);
    return evidence
        .comparedWith("%s against %s".formatted(signed(compared.average()), compared.check()))
        .build();
  }

  /** The share of site-seasons in which the entry was better. */
  Evidence ahead(Better better) {
    CheckComparison compared = comparison(better);
    int of = compared.siteSeasons().size();
    return begin(
            (double) compared.ahead() / of,
            "",
            "Site-seasons in which the mean was better than the check's, of all in which both stood.")
        .comparedWith(
            "ahead of %s in %d of %d site-seasons"
                .formatted(compared.check(), compared.ahead(), of))
        .build();
  }

  /** The difference in the site-season that favours the entry least. */
  Evidence worst(Better better) {
    CheckComparison compared = comparison(better);
    CheckComparison.SiteSeasonDifference worst = compared.worst();
    return begin(
            worst.difference(),
            unit(),
            "The difference from the check in the site-season least in favour of the entry.")
        .comparedWith(
            "%s against %s at %s"
                .formatted(signed(worst.difference()), compared.check(), worst.at()))
        .build();
  }

  /**
   * The ratio to the check where there was pressure; no record where there was none.
   *
   * @param susceptible the susceptible check's mean by trial and site-season
   */
  Evidence relative(Map<UUID, Map<SiteSeason, Double>> susceptible) {
    List<Pairing.Side> pressed =
        pair.sides().stream()
            .filter(side -> pressure(susceptible, side) >= PRESSURE && side.check().mean() != null)
            .filter(side -> Pairing.Side.value(side.check()) > 0)
            .toList();
    List<String> without =
        pair.sides().stream()
            .filter(side -> !pressed.contains(side))
            .map(side -> side.at().toString())
            .distinct()
            .sorted()
            .toList();
    if (pressed.isEmpty()) {
      return Evidence.noRecord(
          "The susceptible check reached %.0f nowhere: no pressure, no credit."
              .formatted(PRESSURE));
    }
    Map<String, Double> bySite =
        pressed.stream()
            .collect(
                Collectors.groupingBy(
                    side -> side.at().site(),
                    TreeMap::new,
                    Collectors.averagingDouble(Pairing.Side::ratio)));
    PlantSample sites = PlantSample.of(List.copyOf(bySite.values()));
    EvidenceBuilder evidence =
        begin(
            pressed,
            sites.mean(),
            "",
            "Ratio to the check in site-seasons in which the susceptible check reached %.0f,"
                    .formatted(PRESSURE)
                + " averaged by site, then over sites that weigh equally.");
    if (sites.beliefOfMean() instanceof Answer.Known<StudentBelief> known) {
      evidence.believing(known.answer(), LEVEL);
    }
    if (!without.isEmpty()) {
      evidence.remarking("No pressure, no credit: " + String.join(", ", without) + ".");
    }
    return evidence
        .comparedWith("%s times %s".formatted(measures.number(sites.mean(), 2), pair.check()))
        .build();
  }

  private static double pressure(
      Map<UUID, Map<SiteSeason, Double>> susceptible, Pairing.Side side) {
    return susceptible.getOrDefault(side.entry().trialId(), Map.of()).getOrDefault(side.at(), 0.0);
  }

  private CheckComparison comparison(Better better) {
    return pair.compared(better).value().orElseThrow();
  }

  private EvidenceBuilder begin(double value, String unit, String method) {
    return begin(pair.sides(), value, unit, method);
  }

  private EvidenceBuilder begin(
      List<Pairing.Side> sides, double value, String unit, String method) {
    int plots = sides.stream().mapToInt(side -> side.entry().plots()).sum();
    long places = sides.stream().map(Pairing.Side::at).distinct().count();
    EvidenceBuilder evidence =
        Evidence.of(value, unit, newest(sides), method)
            .from(
                plots,
                plots,
                measures.counted(places, "site-season", "site-seasons")
                    + ", "
                    + measures.counted(plots, "plot", "plots"))
            .over(
                (int) sides.stream().map(side -> side.at().site()).distinct().count(),
                (int) sides.stream().map(side -> side.at().season()).distinct().count());
    sides.stream()
        .map(side -> Objects.requireNonNull(codes.get(side.entry().trialId())))
        .distinct()
        .sorted()
        .forEach(
            trial ->
                evidence.citing(
                    "trial %s, %s".formatted(trial, trait.name()),
                    "/trials/%s/traits/%s".formatted(trial, trait.code())));
    pair.lost().forEach(reason -> evidence.remarking("Left out: " + reason + "."));
    return evidence;
  }

  private static LocalDate newest(List<Pairing.Side> sides) {
    return sides.stream()
        .flatMap(side -> Stream.of(side.entry().newest(), side.check().newest()))
        .filter(Objects::nonNull)
        .max(LocalDate::compareTo)
        .orElseThrow();
  }

  private String signed(double difference) {
    return measures.signed(difference, trait.decimals() == 0 ? 1 : trait.decimals(), unit());
  }

  private String unit() {
    return Optional.ofNullable(trait.unit()).orElse("");
  }
}
