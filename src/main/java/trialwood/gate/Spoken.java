package trialwood.gate;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** The latest that people said of each candidate and criterion. */
record Spoken(Map<Topic, Attestation> latest, Map<UUID, String> initials) {

  record Topic(UUID accessionId, String criterion) {}

  /**
   * @param oldestFirst of two things said of the same, the later counts
   */
  static Spoken of(List<Attestation> oldestFirst, Map<UUID, String> initials) {
    Map<Topic, Attestation> latest = new HashMap<>();
    for (Attestation said : oldestFirst) {
      latest.put(new Topic(said.accessionId(), said.criterion()), said);
    }
    return new Spoken(latest, initials);
  }

  Finding finding(Criterion criterion, UUID candidate, LocalDate asOf) {
    Optional<Attestation> said =
        Optional.ofNullable(latest.get(new Topic(candidate, criterion.code())));
    String by =
        said.map(it -> it.recorded())
            .map(it -> it.personId() == null ? it.account() : initials.get(it.personId()))
            .orElse("");
    return Said.finding(criterion, said, by, asOf);
  }
}
