package trialwood.exchange.sheet;

import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.container.Numbering;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** Numbered plants that went into another lot. */
@Component
class PlantMoveSheet extends Sheet {

  private static final Column<String> PLANT = Column.code("plant", Known.PLANT, "its label").key();
  private static final Column<String> LOT =
      Column.code("lot", Known.LOT, "the lot it stands in from then on").required();
  private static final Column<LocalDate> ON = Column.past("on", "the day it moved").key();
  private static final Column<String> BY = Column.by();

  private final Numbering numbering;

  PlantMoveSheet(Numbering numbering) {
    super(46, "plant-moves", PLANT, LOT, ON, BY);
    this.numbering = numbering;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> numbering.move(row.id(PLANT), row.id(LOT), row.the(ON), row.id(BY)));
  }

  @Override
  protected String query() {
    return """
        select u.label, l.label, m.from_date, w.initials
        from plant_place m
          join unit u on u.id = m.plant_id
          join unit l on l.id = m.lot_id
          left join person w on w.id = m.person_id
        where exists (select 1 from plant_place e
                      where e.plant_id = m.plant_id and e.from_date < m.from_date)
        order by m.id
        """;
  }
}
