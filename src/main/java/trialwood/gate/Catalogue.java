package trialwood.gate;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.evidence.EvidenceSource;
import trialwood.evidence.Metric;

/** Every metric that some stage can supply, and who supplies it. */
@Component
public class Catalogue {

  private final Map<String, Metric> metrics = new HashMap<>();
  private final Map<String, EvidenceSource> suppliers = new HashMap<>();

  Catalogue(ObjectProvider<EvidenceSource> sources) {
    for (EvidenceSource source : sources) {
      for (Metric metric : source.metrics()) {
        metrics.put(metric.key(), metric);
        if (suppliers.put(metric.key(), source) != null) {
          throw new IllegalStateException("Two stages supply " + metric.key() + ".");
        }
      }
    }
  }

  public Optional<Metric> metric(String key) {
    return Optional.ofNullable(metrics.get(key));
  }

  /** An answer for each of the accessions; without a record, the answer says so. */
  public Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf) {
    EvidenceSource supplier = suppliers.get(ask.metricKey());
    Map<UUID, Evidence> found =
        supplier == null ? Map.of() : supplier.evidence(ask, accessions, asOf);
    Evidence nothing =
        Evidence.noRecord(
            supplier == null ? "Nothing here computes this metric." : "There is no record yet.");
    String unit = metric(ask.metricKey()).map(Metric::unit).orElse("");
    Map<UUID, Evidence> answers = new HashMap<>();
    for (UUID accession : accessions) {
      Evidence answer = found.getOrDefault(accession, nothing);
      answers.put(accession, answer.unit().isEmpty() ? answer.in(unit) : answer);
    }
    return answers;
  }
}
