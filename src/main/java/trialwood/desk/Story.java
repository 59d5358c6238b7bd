package trialwood.desk;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.springframework.stereotype.Component;
import trialwood.candidate.Candidate;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.evidence.LifeEvent;
import trialwood.evidence.LifeLineSource;
import trialwood.gate.Choice;
import trialwood.gate.Decision;
import trialwood.gate.PastDecisions;
import trialwood.web.LifeLine;
import trialwood.web.Measures;

/** What happened to a candidate, gathered from every stage. */
@Component
class Story {

  private final List<LifeLineSource> stages;
  private final CandidateEvents events;
  private final PastDecisions decisions;
  private final Measures measures;

  Story(
      List<LifeLineSource> stages,
      CandidateEvents events,
      PastDecisions decisions,
      Measures measures) {
    this.stages = stages;
    this.events = events;
    this.decisions = decisions;
    this.measures = measures;
  }

  /** Everything that happened, the newest first. */
  List<LifeEvent> of(UUID accession, String code) {
    List<LifeEvent> all = new ArrayList<>();
    stages.forEach(stage -> all.addAll(stage.events(accession)));
    List<Decision> decided = decisions.findByAccessionIdOrderByOnDateDescIdDesc(accession);
    events
        .findByAccessionIdOrderByOnDate(accession)
        .forEach(event -> all.add(happened(event, decided, code)));
    decided.forEach(decision -> all.add(decided(decision, code)));
    all.sort(Comparator.comparing(LifeEvent::date).reversed());
    return all;
  }

  /** A reopening belongs to the stage whose gate had discarded the candidate. */
  private static LifeEvent happened(CandidateEvent event, List<Decision> decided, String code) {
    String place =
        event.kind() != CandidateEvent.Kind.REOPENED
            ? "candidate"
            : decided.stream()
                .filter(past -> past.choice() == Choice.DISCARD)
                .filter(past -> !past.onDate().isAfter(event.onDate()))
                .findFirst()
                .map(past -> past.gate().word())
                .orElse("candidate");
    return new LifeEvent(
        event.onDate(), place, event.kind().word() + ": " + event.note(), "/candidates/" + code);
  }

  private LifeEvent decided(Decision decision, String code) {
    String against =
        decision.choice() == decision.line()
            ? ""
            : ", against the line (" + decision.line().word() + ")";
    String until =
        decision.choice() == Choice.HOLD ? " until " + measures.date(decision.holdUntil()) : "";
    return new LifeEvent(
        decision.onDate(),
        "gate",
        "%s at the gate of %s%s%s"
            .formatted(decision.choice().word(), decision.gate().word(), until, against),
        "/gates/" + decision.gate().key() + "/" + code);
  }

  private static boolean reopens(LifeEvent event) {
    return event.sentence().startsWith(CandidateEvent.Kind.REOPENED.word());
  }

  /** The planted row: where the candidate stands, and what is on record of each stage. */
  LifeLine lifeLine(Candidate candidate, List<LifeEvent> story) {
    Map<String, String> said = new LinkedHashMap<>();
    for (LifeEvent event : story) {
      String month = measures.month(YearMonth.from(event.date()));
      said.putIfAbsent(event.place(), reopens(event) ? "reopened " + month : month);
    }
    List<LifeLine.Known> known = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      known.add(new LifeLine.Known(stage.word(), said.getOrDefault(stage.word(), "")));
    }
    String present = candidate.stage().word();
    return candidate.standing() == Standing.DISCARDED
        ? LifeLine.stopped(present, known)
        : LifeLine.growing(present, known);
  }
}
