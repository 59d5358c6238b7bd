package trialwood.exchange.sheet;

import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.unit.ShortCode;
import trialwood.unit.ShortCodes;

/**
 * The codes that labels bear. Taken in before trays, lots, plants and plots, so that each finds the
 * one that is printed on it.
 */
@Component
class ShortCodeSheet extends Sheet {

  private static final Column<String> CODE =
      Column.text("short_code", 8, "as printed beside the square, check character last").key();
  private static final Column<String> LABEL =
      Column.text("label", 60, "of the tray, lot, plant, plot or position that bears it")
          .required();

  private final ShortCodes codes;

  ShortCodeSheet(ShortCodes codes) {
    super(11, "short-codes", CODE, LABEL);
    this.codes = codes;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> codes.bring(row.the(LABEL), ShortCode.read(row.the(CODE))));
    codes.passBrought();
  }

  @Override
  protected String query() {
    return """
        select s.code, u.label
        from short_code s
          join unit u on u.label_key = s.label_key
        order by s.code
        """;
  }
}
