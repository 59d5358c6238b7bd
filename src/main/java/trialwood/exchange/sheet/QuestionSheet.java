package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.record.Recorded;
import trialwood.record.Recorder;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;

/** What people saw that did not agree with a label; what counts contradict is asked anew. */
@Component
class QuestionSheet extends Sheet {

  private static final Column<String> UNIT =
      Column.code("unit", Known.UNIT, "label of the tray, lot, plant, plot or position").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was seen").key();
  private static final Column<String> QUESTION =
      Column.text("question", 300, "what was seen").key();
  private static final Column<String> BY = Column.by();
  private static final Column<String> ANSWER =
      Column.text("answer", 300, "what was found out; empty while it is open");
  private static final Column<String> CORRECTION =
      Column.text("correction", 36, "mark of the correction that answers it, as on the sheet ties");

  private final Doubts doubts;
  private final Recorder recorder;

  QuestionSheet(Doubts doubts, Recorder recorder) {
    super(51, "questions", UNIT, ON, QUESTION, BY, ANSWER, CORRECTION);
    this.doubts = doubts;
    this.recorder = recorder;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row -> {
          Recorded by = recorder.by(row.id(BY));
          Doubt doubt = Doubt.noticed(row.id(UNIT), row.the(ON), row.the(QUESTION), by);
          @Nullable UUID correction = Mark.of(row, CORRECTION);
          String answer = row.maybe(ANSWER);
          if (answer != null) {
            doubt.settledBy(correction, answer, by);
          }
          doubts.save(doubt);
        });
  }

  @Override
  protected String query() {
    return """
        select u.label, d.on_date, d.question, w.initials, d.answer, cast(d.correction_id as varchar)
        from doubt d
          join unit u on u.id = d.unit_id
          join person w on w.id = d.person_id
        order by d.id
        """;
  }
}
