package trialwood.container;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.means.PlantSample;
import trialwood.analysis.means.SampleDifference;
import trialwood.analysis.rate.BinomialInterval;
import trialwood.container.PlantEvidence.Round;
import trialwood.container.PlantEvidence.Seen;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceBuilder;
import trialwood.web.Measures;

/** Answers that are read from numbered plants. */
@Component
class PlantAnswers {

  private static final double LEVEL = 0.95;

  private final PlantEvidence plants;
  private final Traits traits;
  private final Measures measures;

  PlantAnswers(PlantEvidence plants, Traits traits, Measures measures) {
    this.plants = plants;
    this.traits = traits;
    this.measures = measures;
  }

  Map<UUID, Evidence> mean(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    return ofRounds(ask, accessions, asOf, this::mean);
  }

  Map<UUID, Evidence> spread(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    return ofRounds(ask, accessions, asOf, this::spread);
  }

  Map<UUID, Evidence> flowering(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    return ofRounds(ask, accessions, asOf, this::flowering);
  }

  /** The evidence of one round for a trait. */
  private interface OfRound {
    Evidence answer(Round round, Trait trait);
  }

  private Map<UUID, Evidence> ofRounds(
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

  Map<UUID, Evidence> againstCheck(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    if (ask.check() == null) {
      throw new IllegalArgumentException("a comparison needs the role of a check");
    }
    UUID trait = Objects.requireNonNull(trait(ask).id());
    List<Seen> checks = plants.ofChecks(ask.check(), trait, asOf);
    return ofRounds(
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
    return new CitedLot(round.lot(), round.newest()).closes(evidence, measures);
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
