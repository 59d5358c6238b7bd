package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.util.List;
import org.springframework.stereotype.Component;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.LookDays;
import trialwood.exchange.Column;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;

/** The crops. */
@Component
class CropSheet extends Sheet {

  private static final Column<String> CROP =
      Column.text("crop", 20, "short code of the crop").key();
  private static final Column<String> BOTANICAL_NAME =
      Column.text("botanical_name", 120, "genus and species").required();
  private static final Column<String> COMMON_NAME =
      Column.text("common_name", 80, "what people call it").required();
  private static final Column<Boolean> WOODY =
      Column.yesNo("woody", "whether it is a tree, shrub or vine").required();
  private static final Column<Integer> ROOTING_FROM_DAYS =
      Column.count("rooting_from_days", "first day after sticking on which roots are expected")
          .required();
  private static final Column<Integer> ROOTING_TO_DAYS =
      Column.count("rooting_to_days", "last day of that expectation").required();
  private static final Column<List<String>> LOOK_DAYS =
      Column.list("look_days", "days after sticking on which trays are looked at").required();
  private static final Column<Integer> CHECK_FLOOR_PERCENT =
      Column.count("check_floor_percent", "a bench check rooted below this voids its run")
          .required();
  private static final Column<String> DENOMINATION_CLASS =
      Column.text("denomination_class", 80, "the class in which names may not repeat");

  private static final Column<BigDecimal> ROOT_KILL =
      Column.decimal("root_kill_celsius", 4, 1, "medium colder than this kills roots in a pot, °C")
          .later();

  private final Crops crops;

  CropSheet(Crops crops) {
    super(
        1,
        "crops",
        CROP,
        BOTANICAL_NAME,
        COMMON_NAME,
        WOODY,
        ROOTING_FROM_DAYS,
        ROOTING_TO_DAYS,
        LOOK_DAYS,
        CHECK_FLOOR_PERCENT,
        DENOMINATION_CLASS,
        ROOT_KILL);
    this.crops = crops;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(row -> crops.save(crop(row)));
  }

  private static Crop crop(Row row) {
    Crop crop =
        new Crop(
            row.the(CROP),
            row.the(BOTANICAL_NAME),
            row.the(COMMON_NAME),
            row.the(WOODY),
            row.the(ROOTING_FROM_DAYS),
            row.the(ROOTING_TO_DAYS),
            LookDays.of(String.join(" ", row.the(LOOK_DAYS))),
            row.the(CHECK_FLOOR_PERCENT),
            row.maybe(DENOMINATION_CLASS));
    crop.rootsDieBelow(row.maybe(ROOT_KILL));
    return crop;
  }

  @Override
  protected String query() {
    return """
        select code, botanical_name, common_name, woody, rooting_from_days, rooting_to_days,
               look_days, check_floor_percent, denomination_class, root_kill_celsius
        from crop
        order by id
        """;
  }
}
