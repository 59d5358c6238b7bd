package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.house.House;
import trialwood.house.Houses;

/** The houses. */
@Component
class HouseSheet extends Sheet {

  private static final Column<String> HOUSE =
      Column.text("house", 60, "what people call it; places in it begin with it").key();
  private static final Column<Boolean> PROPAGATES =
      Column.yesNo("propagates", "whether cuttings stand in it").required();
  private static final Column<String> NOTE = Column.note();

  private final Houses houses;

  HouseSheet(Houses houses) {
    super(12, "houses", HOUSE, PROPAGATES, NOTE);
    this.houses = houses;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> houses.save(new House(row.the(HOUSE), row.the(PROPAGATES), row.maybe(NOTE))));
  }

  @Override
  protected String query() {
    return "select name, propagates, note from house order by id";
  }
}
