package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import trialwood.candidate.Reopening;
import trialwood.candidate.Stage;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.gate.Choice;
import trialwood.gate.Decision;
import trialwood.gate.Decisions;
import trialwood.gate.PastDecisions;
import trialwood.gate.Review;
import trialwood.gate.Reviews;
import trialwood.gate.Ruling;

/** What was decided at the gates, in the order of the days. */
@Component
class DecisionSheet extends Sheet {

  private static final Column<String> ACCESSION =
      Column.code("accession", Known.CANDIDATE, "the candidate").key();
  private static final Column<Stage> GATE =
      Column.choice("gate", Stage.class, "the gate at which it stood").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the decision").key();
  private static final Column<Choice> CHOICE =
      Column.choice("choice", Choice.class, "what was decided").required();
  private static final Column<LocalDate> HOLD_UNTIL =
      Column.day("hold_until", "the day on which a held candidate is looked at again");
  private static final Column<String> REASON =
      Column.text("reason", 1000, "required where the records speak for something else");
  private static final Column<String> BY = Column.by();

  private final Decisions decisions;
  private final Reviews reviews;
  private final PastDecisions past;
  private final Reopening reopening;

  DecisionSheet(Decisions decisions, Reviews reviews, PastDecisions past, Reopening reopening) {
    super(73, "decisions", ACCESSION, GATE, ON, CHOICE, HOLD_UNTIL, REASON, BY);
    this.decisions = decisions;
    this.reviews = reviews;
    this.past = past;
    this.reopening = reopening;
  }

  @Override
  protected void apply(Rows rows) {
    rows.eachAmong(row -> List.of(row.the(GATE), row.the(ON)), this::gateDay);
  }

  /** All candidates of one gate and day are reviewed at once. */
  private Consumer<Row> gateDay(List<Row> rows) {
    Set<UUID> candidates =
        rows.stream().flatMap(row -> row.known(ACCESSION).stream()).collect(Collectors.toSet());
    Row any = rows.get(0);
    Map<UUID, Review> reviewed = reviews.of(any.the(GATE), candidates, any.the(ON));
    return row -> keep(decisions.decide(ruling(row), reviewed.get(row.id(ACCESSION))));
  }

  /** A discard that was taken back later is taken back here too. */
  private void keep(Decision decision) {
    if (decision.choice() == Choice.DISCARD) {
      UUID candidate = decision.accessionId();
      reopening.catchUp(
          candidate,
          past.findByAccessionIdOrderByOnDateDescIdDesc(candidate).stream()
              .filter(one -> one.choice() == Choice.DISCARD)
              .count());
    }
  }

  private static Ruling ruling(Row row) {
    return new Ruling(
        row.id(ACCESSION),
        row.the(GATE),
        row.the(CHOICE),
        row.maybe(REASON),
        row.maybe(HOLD_UNTIL),
        row.id(BY),
        row.the(ON));
  }

  @Override
  protected String query() {
    return """
        select a.code, d.gate, d.on_date, d.choice, d.hold_until, d.reason, w.initials
        from decision d
          join accession a on a.id = d.accession_id
          left join person w on w.id = d.person_id
        order by d.id
        """;
  }
}
