package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.NewLook;
import trialwood.propagation.TrayRecords;

/** The interim looks at trays: a few plugs lifted. */
@Component
class LookSheet extends Sheet {

  private static final Column<String> TRAY = Column.code("tray", Known.TRAY, "its label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the look").key();
  private static final Column<Integer> LIFTED = Column.count("lifted", "plugs lifted").required();
  private static final Column<Integer> ROOTED =
      Column.count("rooted", "rooted ones of those lifted").required();
  private static final Column<Integer> ALIVE =
      Column.count("alive", "cuttings alive in the whole tray").required();
  private static final Column<Integer> DEAD_REMOVED =
      Column.count("dead_removed", "dead ones thrown out at this look; empty is none");
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();

  private final TrayRecords records;

  LookSheet(TrayRecords records) {
    super(34, "looks", TRAY, ON, LIFTED, ROOTED, ALIVE, DEAD_REMOVED, BY, NOTE);
    this.records = records;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            records.look(
                row.id(TRAY),
                new NewLook(
                    row.the(ON),
                    row.the(LIFTED),
                    row.the(ROOTED),
                    row.the(ALIVE),
                    row.orElse(DEAD_REMOVED, 0),
                    row.maybe(NOTE)),
                row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select u.label, l.on_date, l.lifted, l.rooted, l.alive, l.dead_removed, w.initials, l.note
        from tray_look l
          join unit u on u.id = l.tray_id
          left join person w on w.id = l.person_id
        where not exists (select 1 from tray_look n where n.supersedes_id = l.id)
        order by l.id
        """;
  }
}
