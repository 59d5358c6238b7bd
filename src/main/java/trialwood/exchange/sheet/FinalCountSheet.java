package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.Closing;
import trialwood.propagation.NewFinalCount;

/** The counts that close trays; the four numbers add up to what was stuck. */
@Component
class FinalCountSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the count").key();
  private static final Column<Integer> ROOTED =
      Column.count("rooted", "rooted ones in the tray").required();
  private static final Column<Integer> ALIVE_WITHOUT_ROOTS =
      Column.count("alive_without_roots", "alive, no roots yet").required();
  private static final Column<Integer> DEAD = Column.count("dead", "dead ones").required();
  private static final Column<Integer> TAKEN_OUT =
      Column.count("taken_out", "taken out before, as on the sheet taken-out").required();
  private static final Column<Integer> ROOT_SCORE =
      Column.count("root_score", "most of the tray, 0 to 5");
  private static final Column<String> BY = Column.by().key();
  private static final Column<String> NOTE = Column.note();

  private final Closing closing;

  FinalCountSheet(Closing closing) {
    super(
        36,
        "final-counts",
        TRAY,
        ON,
        ROOTED,
        ALIVE_WITHOUT_ROOTS,
        DEAD,
        TAKEN_OUT,
        ROOT_SCORE,
        BY,
        NOTE);
    this.closing = closing;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> closing.finalCount(row.id(TRAY), count(row), row.id(BY)));
  }

  private static NewFinalCount count(Row row) {
    return new NewFinalCount(
        row.the(ON),
        row.the(ROOTED),
        row.the(ALIVE_WITHOUT_ROOTS),
        row.the(DEAD),
        row.the(TAKEN_OUT),
        row.maybe(ROOT_SCORE),
        row.maybe(NOTE),
        null);
  }

  @Override
  protected String query() {
    return """
        select u.label, c.on_date, c.rooted, c.alive_without_roots, c.dead, c.taken_out,
               c.root_score, w.initials, c.note
        from final_count c
          join unit u on u.id = c.tray_id
          left join person w on w.id = c.person_id
        where not exists (select 1 from superseded_count s where s.count_id = c.id)
        order by c.id
        """;
  }
}
