package trialwood.arithmetic;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.stereotype.Component;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.lineage.Accessions;

/** What is left after each step, by the nursery's own records of an accession. */
@Component
class CandidateRates {

  /** The steps from cutting to plant, by the names of their boxes. */
  static final Map<String, String> STEPS = steps();

  private static final Map<String, String> METRICS =
      Map.of(
          "rooted", "propagation.rooted",
          "weaned", "propagation.off-the-mist",
          "potted", "container.lost",
          "wintered", "container.lost-shifted");

  private final Accessions accessions;
  private final List<EvidenceSource> sources;
  private final Clock clock;

  CandidateRates(Accessions accessions, List<EvidenceSource> sources, Clock clock) {
    this.accessions = accessions;
    this.sources = sources;
    this.clock = clock;
  }

  /**
   * A rate that was seen.
   *
   * @param rate a fraction
   * @param counted the counts behind it
   */
  record Rate(double rate, String counted) {}

  /** The rates on record, by the box they fill; empty where nobody bears the code. */
  Optional<Map<String, Rate>> of(String code) {
    return accessions.named(code).map(accession -> rates(accession.id()));
  }

  private Map<String, Rate> rates(UUID accession) {
    Map<String, Rate> rates = new HashMap<>();
    METRICS.forEach((box, metric) -> seen(accession, metric).ifPresent(r -> rates.put(box, r)));
    return rates;
  }

  private Optional<Rate> seen(UUID accession, String metric) {
    return sources.stream()
        .filter(source -> source.metrics().stream().anyMatch(one -> one.key().equals(metric)))
        .map(
            source ->
                source
                    .evidence(new Ask(metric, null, null), Set.of(accession), LocalDate.now(clock))
                    .get(accession))
        .filter(evidence -> evidence != null && evidence.value() != null)
        .findFirst()
        .map(CandidateRates::rate);
  }

  /** Some metrics are a share in percent, some count those lost of the number seen. */
  private static Rate rate(Evidence seen) {
    double value = seen.value() == null ? 0 : seen.value();
    String counted = seen.counted() == null ? "" : seen.counted();
    return seen.unit().equals("%")
        ? new Rate(value / 100, counted)
        : new Rate(Math.min(1, 1 - value / seen.n()), "lost " + counted);
  }

  private static Map<String, String> steps() {
    Map<String, String> steps = new LinkedHashMap<>();
    steps.put("rooted", "Rooted, of stuck");
    steps.put("weaned", "Alive off the mist, of rooted");
    steps.put("potted", "Alive in the first pots, of potted");
    steps.put("wintered", "Alive after shift and winter");
    return steps;
  }
}
