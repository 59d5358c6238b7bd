package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.record.Recorder;
import trialwood.unit.Identity;
import trialwood.unit.Tie;

/** What was said later of whose plant a unit is: exchanged labels, corrections. */
@Component
class TieSheet extends Sheet {

  private static final Column<String> UNIT =
      Column.code("unit", Known.UNIT, "label of the tray, lot, plant, plot or position").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "whose plant it is").key();
  private static final Column<LocalDate> FROM =
      Column.past("from", "first day on which it is").key();
  private static final Column<LocalDate> UNTIL =
      Column.day("until", "first day on which it is no longer; empty while it lasts");
  private static final Column<String> REASON =
      Column.text("reason", 300, "why this is said").required();
  private static final Column<String> EVIDENCE =
      Column.text("evidence", 300, "what shows it: a photograph, the flower");
  private static final Column<LocalDate> SAID_ON =
      Column.past("said_on", "the day it was said; a later word overrides an earlier").key();
  private static final Column<String> BY = Column.by();
  private static final Column<String> CORRECTION =
      Column.text("correction", 36, "the same mark, a UUID, on all rows of one correction");

  private final Identity identity;
  private final Recorder recorder;

  TieSheet(Identity identity, Recorder recorder) {
    super(50, "ties", UNIT, ACCESSION, FROM, UNTIL, REASON, EVIDENCE, SAID_ON, BY, CORRECTION);
    this.identity = identity;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    List<Tie> sayings = new ArrayList<>();
    rows.each(
        row ->
            sayings.add(
                new Tie(
                        row.id(UNIT),
                        row.id(ACCESSION),
                        row.the(FROM),
                        row.maybe(UNTIL),
                        row.the(REASON),
                        row.maybe(EVIDENCE),
                        row.the(SAID_ON),
                        recorder.by(row.id(BY)))
                    .within(Mark.of(row, CORRECTION))));
    identity.say(sayings);
  }

  /** A unit's first tie was made with the unit and goes out on that sheet. */
  @Override
  protected String query() {
    return """
        select u.label, a.code, t.from_date, t.until_date, t.reason, t.evidence, t.said_on,
               w.initials, cast(t.correction_id as varchar)
        from tie t
          join unit u on u.id = t.unit_id
          join accession a on a.id = t.accession_id
          left join person w on w.id = t.person_id
        where exists (select 1 from tie f where f.unit_id = t.unit_id and f.id < t.id)
        order by t.id
        """;
  }
}
