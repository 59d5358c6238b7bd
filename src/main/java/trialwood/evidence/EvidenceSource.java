package trialwood.evidence;

import java.time.LocalDate;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** A stage that can answer for candidates from its records. */
public interface EvidenceSource {

  /** What it can be asked. */
  Set<Metric> metrics();

  /**
   * Answers for all the accessions at once, with a number of statements that does not grow with
   * theirs, from the records dated {@code asOf} or before. An accession that is missing from the
   * answer has no record.
   */
  Map<UUID, Evidence> evidence(Ask ask, Set<UUID> accessions, LocalDate asOf);

  /**
   * Answers several questions about the same accessions. A source that answers them from the same
   * records reads those once for all.
   */
  default Map<Ask, Map<UUID, Evidence>> evidence(
      Set<Ask> asks, Set<UUID> accessions, LocalDate asOf) {
    return asks.stream()
        .collect(Collectors.toMap(ask -> ask, ask -> evidence(ask, accessions, asOf)));
  }
}
