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
    events
        .findByAccessionIdOrderByOnDate(accession)
        .forEach(
            event ->
                all.add(
                    new LifeEvent(
                        event.onDate(),
                        "candidate",
                        event.kind().word() + ": " + event.note(),
                        "/candidates/" + code)));
    decisions
        .findByAccessionIdOrderByOnDateDescIdDesc(accession)
        .forEach(decision -> all.add(decided(decision, code)));
    all.sort(Comparator.comparing(LifeEvent::date).reversed());
    return all;
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

  /** The planted row: where the candidate stands, and what is on record of each stage. */
  LifeLine lifeLine(Candidate candidate, List<LifeEvent> story) {
    Map<String, String> said = new LinkedHashMap<>();
    for (LifeEvent event : story) {
      said.putIfAbsent(event.place(), measures.month(YearMonth.from(event.date())));
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
