package trialwood.gate;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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

  /**
   * An answer to each question for each of the accessions; without a record, the answer says so.
   * Whoever supplies several of the answers is asked once.
   */
  public Map<Ask, Map<UUID, Evidence>> evidence(
      Set<Ask> asks, Set<UUID> accessions, LocalDate asOf) {
    Map<EvidenceSource, Set<Ask>> bySupplier = new LinkedHashMap<>();
    Map<Ask, Map<UUID, Evidence>> answers = new HashMap<>();
    for (Ask ask : asks) {
      EvidenceSource supplier = suppliers.get(ask.metricKey());
      if (supplier == null) {
        answers.put(ask, each(ask, accessions, Map.of(), "Nothing here computes this metric."));
      } else {
        bySupplier.computeIfAbsent(supplier, it -> new HashSet<>()).add(ask);
      }
    }
    bySupplier.forEach(
        (supplier, asked) ->
            supplier
                .evidence(asked, accessions, asOf)
                .forEach(
                    (ask, found) ->
                        answers.put(ask, each(ask, accessions, found, "There is no record yet."))));
    return answers;
  }

  private Map<UUID, Evidence> each(
      Ask ask, Set<UUID> accessions, Map<UUID, Evidence> found, String otherwise) {
    Evidence nothing = Evidence.noRecord(otherwise);
    String unit = metric(ask.metricKey()).map(Metric::unit).orElse("");
    Map<UUID, Evidence> answers = new HashMap<>();
    for (UUID accession : accessions) {
      Evidence answer = found.getOrDefault(accession, nothing);
      answers.put(accession, answer.unit().isEmpty() ? answer.in(unit) : answer);
    }
    return answers;
  }
}
