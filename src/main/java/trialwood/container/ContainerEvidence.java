package trialwood.container;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.container.LotEvidence.Counted;
import trialwood.container.PlantEvidence.Round;
import trialwood.container.PlantEvidence.Seen;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;
import trialwood.web.Measures;

/** Answers for candidates from their lots and numbered plants. */
@Component
class ContainerEvidence implements EvidenceSource {

  private static final double LEVEL = 0.95;

  private final LotEvidence lots;
  private final PlantEvidence plants;
  private final Traits traits;
  private final Measures measures;

  ContainerEvidence(LotEvidence lots, PlantEvidence plants, Traits traits, Measures measures) {
    this.lots = lots;
    this.plants = plants;
    this.traits = traits;
    this.measures = measures;
  }

  @Override
  public Set<Metric> metrics() {
    return Set.of(
        new Metric(
            "container.lost",
            "Losses in the first pots",
            "plants",
            "Plants of the newest counted lot from trays that died or are missing, of those potted."),
        new Metric(
            "container.lost-shifted",
            "Losses since the shift",
            "plants",
            "The same for the newest counted lot of shifted plants."),
        new Metric(
            "container.saleable",
            "Saleable of those alive, first pots",
            "%",
            "Saleable ÷ alive at the last graded count of the newest lot from trays."),
        new Metric(
            "container.saleable-shifted",
            "Saleable of those alive, after the shift",
            "%",
            "The same for the newest lot of shifted plants."),
        new Metric(
            "container.mean",
            "Mean of the numbered plants",
            "",
            "Mean of a trait over the numbered plants of the newest lot in its latest round."),
        new Metric(
            "container.spread",
            "Evenness of the numbered plants",
            "%",
            "Standard deviation ÷ mean of the same plants: the coefficient of variation."),
        new Metric(
            "container.against-check",
            "Difference from the check in the same yard",
            "",
            "Mean less the mean of the check's plants in pots of the same class, same year."),
        new Metric(
            "container.flowering",
            "Plants in flower",
            "%",
            "Numbered plants with at least one open flower, of those looked at in the round."));
  }

  @Override
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (accessions.isEmpty()) {
      return Map.of();
    }
    return switch (ask.metricKey()) {
      case "container.lost" -> ofLots(accessions, asOf, false, false, this::lost);
      case "container.lost-shifted" -> ofLots(accessions, asOf, true, false, this::lost);
      case "container.saleable" -> ofLots(accessions, asOf, false, true, this::saleable);
      case "container.saleable-shifted" -> ofLots(accessions, asOf, true, true, this::saleable);
      case "container.mean" -> ofPlants(ask, accessions, asOf, this::mean);
      case "container.spread" -> ofPlants(ask, accessions, asOf, this::spread);
      case "container.flowering" -> ofPlants(ask, accessions, asOf, this::flowering);
      case "container.against-check" -> againstCheck(ask, accessions, asOf);
      default -> throw new IllegalArgumentException("not a container metric: " + ask.metricKey());
    };
  }

  private Map<UUID, Evidence> ofLots(
      Set<UUID> accessions,
      LocalDate asOf,
      boolean shifted,
      boolean graded,
      Function<Counted, Evidence> answer) {
    return lots.newest(accessions, asOf, shifted, graded).stream()
        .collect(Collectors.toMap(Counted::accessionId, answer));
  }

  private Evidence lost(Counted lot) {
    EvidenceBuilder evidence =
        Evidence.of(
                lot.gone(), "plants", lot.newest(), "Losses on record, and what a count missed.")
            .from(lot.potted(), 1, measures.share(lot.gone(), lot.potted()) + " potted")
            .over(1, 1);
    if (lot.missing() > 0) {
      evidence.remarking(
          "%d were missing on %s without a record of their loss."
              .formatted(lot.missing(), measures.date(lot.onDate())));
    }
    if (lot.missing() < 0) {
      evidence.remarking(
          "%d more were alive on %s than the records leave."
              .formatted(-lot.missing(), measures.date(lot.onDate())));
    }
    return citing(evidence, lot.label(), lot.onDate());
  }

  private Evidence saleable(Counted lot) {
    int saleable = Objects.requireNonNull(lot.saleable());
    if (lot.alive() == 0) {
      return Evidence.noRecord("Nothing was alive in lot %s.".formatted(lot.label()));
    }
    EvidenceBuilder evidence =
        Evidence.of(
                100.0 * saleable / lot.alive(),
                "%",
                lot.onDate(),
                "Saleable ÷ alive; 95 % interval by Wilson's score (1927).")
            .from(lot.alive(), 1, measures.share(saleable, lot.alive()))
            .over(1, 1)
            .within(inPercent(BinomialInterval.wilson(saleable, lot.alive(), LEVEL)));
    return citing(evidence, lot.label(), lot.onDate());
  }

  /** The evidence of one round for a trait. */
  private interface OfRound {
    Evidence answer(Round round, Trait trait);
  }

  private Map<UUID, Evidence> ofPlants(
      Ask ask, Set<UUID> accessions, LocalDate asOf, OfRound question) {
    Trait trait = trait(ask);
    Map<UUID, Evidence> answers = new HashMap<>();
    plants
        .latest(accessions, Objects.requireNonNull(trait.id()), asOf)
        .forEach((accession, round) -> answers.put(accession, question.answer(round, trait)));
    return answers;
  }

  private Evidence mean(Round round, Trait trait) {
    if (round.numbers().isEmpty()) {
      return Evidence.noRecord("No plant of lot %s has a value.".formatted(round.lot()));
    }
    PlantSample sample = round.sample();
    EvidenceBuilder evidence =
        Evidence.of(
            sample.mean(),
            unit(trait),
            round.newest(),
            "Mean of the numbered plants; 95 % interval by Student's t.");
    sample.beliefOfMean().value().ifPresent(belief -> evidence.believing(belief, LEVEL));
    return cite(evidence, round, sample.n());
  }

  private Evidence spread(Round round, Trait trait) {
    if (round.numbers().isEmpty()) {
      return Evidence.noRecord("No plant of lot %s has a value.".formatted(round.lot()));
    }
    PlantSample sample = round.sample();
    return sample.cv() instanceof Answer.Known<Double> cv
        ? cite(
            Evidence.of(
                100 * cv.answer(),
                "%",
                round.newest(),
                "Standard deviation ÷ mean of the numbered plants."),
            round,
            sample.n())
        : Evidence.noRecord(sample.cv().lack().orElseThrow());
  }

  private Evidence flowering(Round round, Trait trait) {
    int n = round.plants().size();
    int flowering = (int) round.flowering();
    EvidenceBuilder evidence =
        Evidence.of(
                100.0 * flowering / n,
                "%",
                round.newest(),
                "Plants with an open flower ÷ plants looked at; 95 % interval by Wilson's score.")
            .within(inPercent(BinomialInterval.wilson(flowering, n, LEVEL)));
    return cite(evidence, round, n);
  }

  private Map<UUID, Evidence> againstCheck(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (ask.check() == null) {
      throw new IllegalArgumentException("a comparison needs the role of a check");
    }
    UUID trait = Objects.requireNonNull(trait(ask).id());
    List<Seen> checks = plants.ofChecks(ask.check(), trait, asOf);
    return ofPlants(
        ask,
        accessions,
        asOf,
        (round, of) -> difference(round, plants.beside(round, checks), of, ask));
  }

  private Evidence difference(Round round, @Nullable Round check, Trait trait, Ask ask) {
    String role = Objects.requireNonNull(ask.check()).word();
    if (check == null || check.numbers().isEmpty() || round.numbers().isEmpty()) {
      return Evidence.noRecord(
          "The %s has no values in pots of the same class and year as lot %s."
              .formatted(role, round.lot()));
    }
    PlantSample mine = round.sample();
    PlantSample its = check.sample();
    if (!(SampleDifference.between(mine, its) instanceof Answer.Known<SampleDifference> known)) {
      return Evidence.noRecord("A difference needs at least two plants of each.");
    }
    EvidenceBuilder evidence =
        Evidence.of(
                known.answer().mean(),
                unit(trait),
                round.newest(),
                "Difference of two lots' means, plants as units; Student's t with one variance.")
            .believing(known.answer(), LEVEL)
            .comparedWith(
                "%s here, %s in lot %s of the %s"
                    .formatted(
                        measures.quantity(mine.mean(), trait.decimals() + 1, unit(trait)),
                        measures.quantity(its.mean(), trait.decimals() + 1, unit(trait)),
                        check.lot(),
                        role))
            .citing("lot " + check.lot(), "/containers/" + check.lot());
    return cite(evidence, round, mine.n());
  }

  private Evidence cite(EvidenceBuilder evidence, Round round, int n) {
    evidence.from(n, n, measures.counted(n, "plant", "plants")).over(1, 1);
    return citing(evidence, round.lot(), round.newest());
  }

  private Evidence citing(EvidenceBuilder evidence, String lot, LocalDate day) {
    return evidence
        .citing("lot %s, %s".formatted(lot, measures.date(day)), "/containers/" + lot)
        .build();
  }

  private Trait trait(Ask ask) {
    if (ask.traitId() == null) {
      throw new IllegalArgumentException(ask.metricKey() + " needs a trait");
    }
    return traits.findById(ask.traitId()).orElseThrow();
  }

  private static String unit(Trait trait) {
    return Objects.requireNonNullElse(trait.unit(), "");
  }

  private static Interval inPercent(Interval share) {
    return new Interval(100 * share.low(), 100 * share.high(), share.level());
  }
}
