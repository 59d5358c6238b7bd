package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.CareKind;
import trialwood.container.NewCare;
import trialwood.container.Tending;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** Pinches and prunings of lots, and their winters under cover. */
@Component
class LotCareSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day it was done").key();
  private static final Column<CareKind> KIND =
      Column.choice("kind", CareKind.class, "what was done").key();
  private static final Column<BigDecimal> CUT_TO =
      Column.decimal("cut_to_cm", 5, 1, "height left by the cut, cm");
  private static final Column<String> HOUSE =
      Column.text("house", 80, "where it was covered; covered lots must have it").telling();
  private static final Column<BigDecimal> LOWEST =
      Column.decimal("lowest_celsius", 4, 1, "coldest the medium got under cover, °C");
  private static final Column<Integer> DIEBACK =
      Column.count("dieback_percent", "of the stems' length, seen on uncovering");
  private static final Column<String> BY = Column.by();

  private final Tending tending;

  LotCareSheet(Tending tending) {
    super(
        47,
        "lot-care",
        LOT,
        ON,
        KIND,
        CUT_TO,
        HOUSE,
        LOWEST,
        DIEBACK,
        BY,
        CheckedColumns.ASKED,
        CheckedColumns.CHECKED);
    this.tending = tending;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> tending.care(row.id(LOT), care(row), CheckedColumns.of(row)));
  }

  private static NewCare care(Row row) {
    return new NewCare(
        row.the(ON),
        row.the(KIND),
        row.maybe(CUT_TO),
        row.maybe(HOUSE),
        row.maybe(LOWEST),
        row.maybe(DIEBACK),
        row.id(BY));
  }

  @Override
  protected String query() {
    return """
        select u.label, c.on_date, c.kind, c.cut_to_cm, c.house, c.lowest_celsius,
               c.dieback_percent, w.initials, c.asked, c.checked
        from lot_care c
          join unit u on u.id = c.lot_id
          left join person w on w.id = c.person_id
        where not exists (select 1 from lot_care n where n.supersedes_id = c.id)
        order by c.id
        """;
  }
}
