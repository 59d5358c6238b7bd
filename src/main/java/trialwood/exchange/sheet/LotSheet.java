package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.container.NewLot;
import trialwood.container.Pots;
import trialwood.container.Potting;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The lots: plants potted together into one class of pots. */
@Component
class LotSheet extends Sheet {

  private static final Column<String> LOT = Column.text("lot", 60, "its label").key();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "whose plants, as labelled that day").required();
  private static final Column<String> CLASS =
      Column.code("class", Known.CONTAINER_CLASS, "class of the pots").required();
  private static final Column<BigDecimal> LITRES =
      Column.decimal("litres", 8, 3, "true volume of one pot, litres");
  private static final Column<LocalDate> ON = Column.past("on", "the day of potting").required();
  private static final Column<Integer> NUMBER = Column.count("number", "plants potted").required();
  private static final Column<String> YARD = Column.text("yard", 80, "where they stand");
  private static final Column<String> BY = Column.by();
  private static final Column<String> NOTE = Column.note();
  private static final Column<String> MEDIUM =
      Column.text("medium", 80, "the medium and its lot").later();
  private static final Column<BigDecimal> FEED =
      Column.decimal("feed_grams", 6, 2, "slow fertiliser mixed into one pot, g").later();

  private final Potting potting;

  LotSheet(Potting potting) {
    super(
        40,
        "lots",
        LOT,
        ACCESSION,
        CLASS,
        LITRES,
        ON,
        NUMBER,
        YARD,
        BY,
        NOTE,
        MEDIUM,
        FEED,
        CheckedColumns.ASKED,
        CheckedColumns.CHECKED);
    this.potting = potting;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            potting.pot(
                new NewLot(row.the(LOT), row.id(ACCESSION), pots(row), List.of(), row.id(BY)),
                CheckedColumns.of(row)));
  }

  private static Pots pots(Row row) {
    return new Pots(
        row.id(CLASS),
        row.maybe(LITRES),
        row.the(ON),
        row.the(NUMBER),
        row.maybe(YARD),
        row.maybe(NOTE),
        row.maybe(MEDIUM),
        row.maybe(FEED));
  }

  /** The accession as it was said on potting day; later corrections are ties of their own. */
  @Override
  protected String query() {
    return """
        select u.label, a.code, c.code, l.litres, l.potted_on, l.potted, l.yard, w.initials, l.note,
               l.medium, l.feed_grams, l.asked, l.checked
        from lot l
          join unit u on u.id = l.unit_id
          join container_class c on c.id = l.container_class_id
          join tie f on f.id = (select min(s.id) from tie s where s.unit_id = l.unit_id)
          join accession a on a.id = f.accession_id
          left join person w on w.id = l.person_id
        order by l.unit_id
        """;
  }
}
