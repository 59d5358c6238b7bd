package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.Closing;
import trialwood.propagation.NewWeaning;

/** How the rooted cuttings of each tray live without mist. */
@Component
class WeaningSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> LAST_MIST =
      Column.past("last_mist", "the day of the last mist").required();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the count").key();
  private static final Column<Integer> ALIVE =
      Column.count("alive", "alive of those rooted in the final count").required();
  private static final Column<Integer> WILTED = Column.count("wilted", "wilted ones among them");
  private static final Column<Integer> SHOCK =
      Column.count("shock", "those that show shock, such as dropped leaves");
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private final Closing closing;

  WeaningSheet(Closing closing) {
    super(37, "weanings", TRAY, LAST_MIST, ON, ALIVE, WILTED, SHOCK, BY, NOTE);
    this.closing = closing;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            closing.weaning(
                row.id(TRAY),
                new NewWeaning(
                    row.the(LAST_MIST),
                    row.the(ON),
                    row.the(ALIVE),
                    row.maybe(WILTED),
                    row.maybe(SHOCK),
                    row.maybe(NOTE)),
                row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select u.label, n.last_mist, n.on_date, n.alive, n.wilted, n.shock, w.initials, n.note
        from weaning n
          join unit u on u.id = n.tray_id
          left join person w on w.id = n.person_id
        where not exists (select 1 from weaning s where s.supersedes_id = n.id)
        order by n.id
        """;
  }
}
