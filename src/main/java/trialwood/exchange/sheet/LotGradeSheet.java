package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.NewGrade;
import trialwood.container.Tending;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The gradings of lots. */
@Component
class LotGradeSheet extends Sheet {

  private static final Column<String> LOT = Column.code("lot", Known.LOT, "the lot's label").key();
  private static final Column<LocalDate> ON = Column.past("on", "the day of the grading").key();
  private static final Column<Integer> A =
      Column.count("a", "plants that can be sold as they are; with b and c, or none of the three")
          .telling();
  private static final Column<Integer> B =
      Column.count("b", "plants that need another season or a cut").telling();
  private static final Column<Integer> C =
      Column.count("c", "plants that will not be sold").telling();
  private static final Column<Integer> ROOT_BALL =
      Column.count("root_ball", "0 to 5 on the scale of root balls").telling();
  private static final Column<String> BY = Column.by();

  private final Tending tending;

  LotGradeSheet(Tending tending) {
    super(
        48,
        "lot-grades",
        LOT,
        ON,
        A,
        B,
        C,
        ROOT_BALL,
        BY,
        CheckedColumns.ASKED,
        CheckedColumns.CHECKED);
    this.tending = tending;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> tending.grade(row.id(LOT), grade(row), CheckedColumns.of(row)));
  }

  private static NewGrade grade(Row row) {
    return new NewGrade(
        row.the(ON), row.maybe(A), row.maybe(B), row.maybe(C), row.maybe(ROOT_BALL), row.id(BY));
  }

  @Override
  protected String query() {
    return """
        select u.label, g.on_date, g.grade_a, g.grade_b, g.grade_c, g.root_ball, w.initials,
               g.asked, g.checked
        from lot_grade g
          join unit u on u.id = g.lot_id
          left join person w on w.id = g.person_id
        where not exists (select 1 from lot_grade n where n.supersedes_id = g.id)
        order by g.id
        """;
  }
}
