package trialwood.gate.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.candidate.Stage;
import trialwood.gate.Decision;
import trialwood.gate.DecisionLine;
import trialwood.gate.LaterCorrections;
import trialwood.gate.PastDecisions;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Person;
import trialwood.people.Persons;

/** Decisions with the codes and initials that people read. */
@Component
class Minutes {

  private final PastDecisions past;
  private final Accessions accessions;
  private final Persons persons;
  private final LaterCorrections corrections;

  Minutes(
      PastDecisions past, Accessions accessions, Persons persons, LaterCorrections corrections) {
    this.past = past;
    this.accessions = accessions;
    this.persons = persons;
    this.corrections = corrections;
  }

  /**
   * One decision.
   *
   * @param by initials of the person, or the account where nobody was named
   * @param corrections of labels that reached behind it later; the evidence stays as it stood
   */
  record Entry(
      String code,
      @Nullable String talkName,
      String gate,
      Decision decision,
      String by,
      List<LaterCorrections.Touched> corrections) {

    public List<DecisionLine> lines() {
      return decision.lines();
    }
  }

  /** What was decided at a gate, both days included. */
  List<Entry> of(Stage gate, LocalDate from, LocalDate until) {
    return entries(past.findByGateAndOnDateBetweenOrderByOnDateAscIdAsc(gate, from, until));
  }

  /** What was ever decided of a candidate, the latest first. */
  List<Entry> of(Accession accession) {
    return entries(
        past.findByAccessionIdOrderByOnDateDescIdDesc(Objects.requireNonNull(accession.id())));
  }

  private List<Entry> entries(List<Decision> decisions) {
    Set<UUID> decided = decisions.stream().map(Decision::accessionId).collect(Collectors.toSet());
    Map<UUID, Accession> named =
        accessions.findAllById(decided).stream()
            .collect(Collectors.toMap(Accession::id, accession -> accession));
    Set<UUID> deciders =
        decisions.stream()
            .flatMap(decision -> Optional.ofNullable(decision.recorded().personId()).stream())
            .collect(Collectors.toSet());
    Map<UUID, String> initials =
        persons.findAllById(deciders).stream()
            .collect(Collectors.toMap(Person::id, Person::initials));
    Map<UUID, List<LaterCorrections.Touched>> corrected =
        corrections.behind(decisions.stream().map(Decision::id).filter(Objects::nonNull).toList());
    return decisions.stream()
        .map(
            decision -> {
              Accession accession = Objects.requireNonNull(named.get(decision.accessionId()));
              UUID person = decision.recorded().personId();
              return new Entry(
                  accession.code(),
                  accession.talkName(),
                  Gates.title(decision.gate()),
                  decision,
                  person == null ? decision.recorded().account() : initials.get(person),
                  corrected.getOrDefault(decision.id(), List.of()));
            })
        .toList();
  }
}
