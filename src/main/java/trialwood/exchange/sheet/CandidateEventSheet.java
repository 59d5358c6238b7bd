package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.candidate.CandidateEvent;
import trialwood.candidate.CandidateEvents;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.record.Recorder;

/**
 * What happened to candidates after the tag. A reopening comes in before the discard that it takes
 * back, and waits for it.
 */
@Component
class CandidateEventSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.code("accession", Known.CANDIDATE, "the candidate").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it happened").key();
  private static final Column<CandidateEvent.Kind> EVENT =
      Column.choice("event", CandidateEvent.Kind.class, "what happened").key();
  private static final Column<String> NOTE =
      Column.text("note", 300, "how, in a few words").required();
  private static final Column<String> BY = Column.by();

  private final CandidateEvents events;
  private final Recorder recorder;

  CandidateEventSheet(CandidateEvents events, Recorder recorder) {
    super(22, "candidate-events", ACCESSION, ON, EVENT, NOTE, BY);
    this.events = events;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            events.save(
                new CandidateEvent(
                    row.id(ACCESSION),
                    row.the(ON),
                    row.the(EVENT),
                    row.the(NOTE),
                    recorder.by(row.id(BY)))));
  }

  /** The mark that came with the tag goes out with the tag. */
  @Override
  protected String query() {
    return """
        select a.code, e.on_date, e.kind, e.note, w.initials
        from candidate_event e
          join accession a on a.id = e.accession_id
          left join person w on w.id = e.person_id
          left join field_tag t on t.accession_id = e.accession_id
            and e.kind = 'MARKED_OUTSTANDING' and e.on_date = t.tagged_on and e.note = t.seen
        where t.id is null
        order by e.id
        """;
  }
}
