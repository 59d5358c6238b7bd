package trialwood.container;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Component;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;

/** Answers for candidates from their lots and numbered plants. */
@Component
class ContainerEvidence implements EvidenceSource {

  private final LotAnswers lots;
  private final PlantAnswers plants;

  ContainerEvidence(LotAnswers lots, PlantAnswers plants) {
    this.lots = lots;
    this.plants = plants;
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
            "Saleable ÷ graded at the last grading, or count that says it, of the newest lot from trays."),
        new Metric(
            "container.saleable-shifted",
            "Saleable of those alive, after the shift",
            "%",
            "The same for the newest lot of shifted plants."),
        new Metric(
            "container.root-ball",
            "Root ball, first pots",
            "",
            "Score 0 to 5 of the last look at a root ball of the newest lot from trays."),
        new Metric(
            "container.root-ball-shifted",
            "Root ball, after the shift",
            "",
            "The same for the newest lot of shifted plants."),
        new Metric(
            "container.wintered",
            "Through the winter",
            "%",
            "Alive at the first count from February to June ÷ alive at the last from September to "
                + "December before it, in the newest such lot; plants taken out between count as alive."),
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
      case "container.lost" -> lots.lost(accessions, asOf, false);
      case "container.lost-shifted" -> lots.lost(accessions, asOf, true);
      case "container.saleable" -> lots.saleable(accessions, asOf, false);
      case "container.saleable-shifted" -> lots.saleable(accessions, asOf, true);
      case "container.root-ball" -> lots.rootBall(accessions, asOf, false);
      case "container.root-ball-shifted" -> lots.rootBall(accessions, asOf, true);
      case "container.wintered" -> lots.wintered(accessions, asOf);
      case "container.mean" -> plants.mean(ask, accessions, asOf);
      case "container.spread" -> plants.spread(ask, accessions, asOf);
      case "container.flowering" -> plants.flowering(ask, accessions, asOf);
      case "container.against-check" -> plants.againstCheck(ask, accessions, asOf);
      default -> throw new IllegalArgumentException("not a container metric: " + ask.metricKey());
    };
  }
}
