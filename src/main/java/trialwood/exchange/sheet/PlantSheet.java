package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.container.NewPlant;
import trialwood.container.Numbering;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The plants with a number of their own. */
@Component
class PlantSheet extends Sheet {

  private static final Column<String> PLANT = Column.text("plant", 60, "its label").key();
  private static final Column<String> LOT =
      Column.code("lot", Known.LOT, "the lot it was numbered in").required();
  private static final Column<Integer> NUMBER = Column.count("number", "its number").required();
  private static final Column<LocalDate> FROM =
      Column.past("from", "the day it was numbered").required();

  private final Numbering numbering;

  PlantSheet(Numbering numbering) {
    super(45, "plants", PLANT, LOT, NUMBER, FROM);
    this.numbering = numbering;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            numbering.number(
                row.id(LOT),
                List.of(new NewPlant(row.the(PLANT), row.the(NUMBER))),
                row.the(FROM),
                null));
  }

  /** The first place of a plant; the later ones are moves. */
  @Override
  protected String query() {
    return """
        select u.label, l.label, p.number, f.from_date
        from plant p
          join unit u on u.id = p.unit_id
          join plant_place f on f.plant_id = p.unit_id
          join unit l on l.id = f.lot_id
        where not exists (select 1 from plant_place e
                          where e.plant_id = p.unit_id and e.from_date < f.from_date)
        order by p.unit_id
        """;
  }
}
