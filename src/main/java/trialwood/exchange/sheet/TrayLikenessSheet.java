package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.LikenessPrior;
import trialwood.propagation.TrayLikeness;

/** Which belief about the likeness of a tray's cuttings stands from a day on. */
@Component
class TrayLikenessSheet extends Sheet {

  private static final Column<LocalDate> ON = Column.past("on", "from which day it stands").key();
  private static final Column<LikenessPrior> PRIOR =
      Column.choice("prior", LikenessPrior.class, "usual, or own: what the nursery's trays teach")
          .key();
  private static final Column<String> REASON = Column.text("reason", 300, "why").key();
  private static final Column<String> BY = Column.by();

  private final TrayLikeness likeness;

  TrayLikenessSheet(TrayLikeness likeness) {
    super(15, "tray-likeness", ON, PRIOR, REASON, BY);
    this.likeness = likeness;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> likeness.choose(row.the(ON), row.the(PRIOR), row.the(REASON), row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select c.on_date, c.prior, c.reason, w.initials
        from tray_likeness_choice c
          left join person w on w.id = c.person_id
        order by c.on_date, c.id
        """;
  }
}
