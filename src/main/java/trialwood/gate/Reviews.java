package trialwood.gate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.candidate.CandidateMarks;
import trialwood.candidate.Stage;
import trialwood.evidence.Ask;
import trialwood.evidence.Evidence;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Person;
import trialwood.people.Persons;

/**
 * Holds candidates against the policy in force. Everything is asked for all of them at once: the
 * number of statements grows with the criteria, never with the candidates.
 */
@Service
@Transactional(readOnly = true)
public class Reviews {

  private final Accessions accessions;
  private final GatePolicies policies;
  private final Attestations attestations;
  private final CandidateMarks marks;
  private final Persons persons;
  private final Catalogue catalogue;

  Reviews(
      Accessions accessions,
      GatePolicies policies,
      Attestations attestations,
      CandidateMarks marks,
      Persons persons,
      Catalogue catalogue) {
    this.accessions = accessions;
    this.policies = policies;
    this.attestations = attestations;
    this.marks = marks;
    this.persons = persons;
    this.catalogue = catalogue;
  }

  /**
   * What the records dated {@code asOf} or before say at the gate of a stage. A candidate whose
   * crop had no policy in force on that day is missing from the answer.
   */
  public Map<UUID, Review> of(Stage gate, Set<UUID> candidates, LocalDate asOf) {
    if (candidates.isEmpty()) {
      return Map.of();
    }
    Map<UUID, Set<UUID>> byCrop =
        accessions.findAllById(candidates).stream()
            .collect(
                Collectors.groupingBy(
                    Accession::cropId, Collectors.mapping(Accession::id, Collectors.toSet())));
    Set<UUID> provisional = marks.provisional(candidates, asOf);
    Set<UUID> outstanding = marks.outstanding(candidates, asOf);
    Spoken spoken = spoken(candidates, asOf);
    Map<UUID, Review> reviews = new LinkedHashMap<>();
    for (GatePolicy policy : policies.inForce(byCrop.keySet(), asOf)) {
      Set<UUID> grown = byCrop.getOrDefault(policy.cropId(), Set.of());
      List<Criterion> criteria = policy.at(gate);
      Map<Ask, Map<UUID, Evidence>> answers = catalogue.evidence(asks(criteria), grown, asOf);
      for (UUID candidate : grown) {
        List<Finding> findings = new ArrayList<>();
        for (Criterion criterion : criteria) {
          Ask ask = criterion.ask();
          findings.add(
              ask == null
                  ? spoken.finding(criterion, candidate, asOf)
                  : criterion.judge(
                      answers.get(ask).get(candidate), outstanding.contains(candidate)));
        }
        reviews.put(
            candidate,
            new Review(candidate, gate, policy, asOf, findings, provisional.contains(candidate)));
      }
    }
    return reviews;
  }

  private static Set<Ask> asks(List<Criterion> criteria) {
    return criteria.stream()
        .flatMap(criterion -> Optional.ofNullable(criterion.ask()).stream())
        .collect(Collectors.toSet());
  }

  private Spoken spoken(Collection<UUID> candidates, LocalDate asOf) {
    List<Attestation> all = attestations.standing(candidates, asOf);
    Set<UUID> speakers =
        all.stream()
            .flatMap(said -> Optional.ofNullable(said.recorded().personId()).stream())
            .collect(Collectors.toSet());
    return Spoken.of(
        all,
        persons.findAllById(speakers).stream()
            .collect(Collectors.toMap(Person::id, Person::initials)));
  }
}
