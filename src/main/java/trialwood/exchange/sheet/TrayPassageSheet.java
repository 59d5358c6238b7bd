package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.TrayMoves;

/** Cuttings that went from tray to tray; what was taken back is left out. */
@Component
class TrayPassageSheet extends Sheet {

  private static final Column<String> FROM =
      Column.code("from", Known.TRAY, "label of the tray that gave them").key();
  private static final Column<String> TO =
      Column.code("to", Known.TRAY, "label of the tray that took them").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day").key();
  private static final Column<Integer> NUMBER = Column.count("number", "cuttings").key();
  private static final Column<Boolean> BEGINS =
      Column.yesNo("begins", "whether the tray began with these: they are its stuck").required();
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private final TrayMoves moves;

  TrayPassageSheet(TrayMoves moves) {
    super(33, "tray-passages", FROM, TO, ON, NUMBER, BEGINS, BY, NOTE);
    this.moves = moves;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row -> {
          if (row.the(BEGINS)) {
            moves.began(
                row.id(FROM),
                row.id(TO),
                row.the(ON),
                row.the(NUMBER),
                row.maybe(NOTE),
                row.id(BY));
          } else {
            moves.bring(
                row.id(FROM),
                row.id(TO),
                row.the(ON),
                row.the(NUMBER),
                row.maybe(NOTE),
                row.id(BY));
          }
        });
  }

  @Override
  protected String query() {
    return """
        select f.label, t.label, p.on_date, p.number, p.begins, w.initials, p.note
        from tray_passage p
          join unit f on f.id = p.from_tray_id
          join unit t on t.id = p.to_tray_id
          left join person w on w.id = p.person_id
        where not exists (select 1 from passage_taken_back b where b.passage_id = p.id)
        order by p.id
        """;
  }
}
