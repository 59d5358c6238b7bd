package trialwood.exchange.sheet;

import java.math.BigDecimal;
import org.springframework.stereotype.Component;
import trialwood.crop.ContainerClass;
import trialwood.crop.ContainerClasses;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The classes of pots. */
@Component
class ContainerClassSheet extends Sheet {

  private static final Column<String> CLASS =
      Column.text("class", 10, "the class, such as #1").key();
  private static final Column<BigDecimal> LOWEST =
      Column.decimal("lowest_litres", 8, 3, "smallest volume of a pot of the class, litres");
  private static final Column<BigDecimal> HIGHEST =
      Column.decimal("highest_litres", 8, 3, "largest volume, litres");
  private static final Column<String> REMARK =
      Column.text("remark", 200, "where the range comes from, or anything else");

  private final ContainerClasses classes;

  ContainerClassSheet(ContainerClasses classes) {
    super(2, "container-classes", CLASS, LOWEST, HIGHEST, REMARK);
    this.classes = classes;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            classes.save(
                new ContainerClass(
                    row.the(CLASS), row.maybe(LOWEST), row.maybe(HIGHEST), row.maybe(REMARK))));
  }

  @Override
  protected String query() {
    return """
        select code, lowest_litres, highest_litres, remark
        from container_class
        order by id
        """;
  }
}
