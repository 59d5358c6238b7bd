package trialwood.exchange.sheet;

import java.math.BigDecimal;
import java.time.MonthDay;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.Traits;
import trialwood.crop.Window;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.unit.UnitKind;

/** What is seen or measured on the plants of each crop. */
@Component
class TraitSheet extends Sheet {

  private static final Column<String> CROP = Column.code("crop", Known.CROP, "its crop").key();
  private static final Column<String> TRAIT =
      Column.text("trait", 20, "short code of the trait, such as BLOOM").key();
  private static final Column<String> NAME =
      Column.text("name", 80, "what people call it").required();
  private static final Column<TraitKind> KIND =
      Column.choice("kind", TraitKind.class, "what a value is").required();
  private static final Column<String> UNIT =
      Column.text("unit", 20, "unit of its values, as shown to people");
  private static final Column<BigDecimal> LOWEST =
      Column.decimal("lowest", 12, 4, "smallest possible value");
  private static final Column<BigDecimal> HIGHEST =
      Column.decimal("highest", 12, 4, "largest possible value");
  private static final Column<Integer> DECIMALS =
      Column.count("decimals", "decimals that are shown; empty is none");
  private static final Column<Better> BETTER =
      Column.choice("better", Better.class, "which way it is better").required();
  private static final Column<MonthDay> WINDOW_FROM =
      Column.dayOfYear("window_from", "first day of the year on which it can be seen");
  private static final Column<MonthDay> WINDOW_TO =
      Column.dayOfYear("window_to", "last day of the year on which it can be seen");
  private static final Column<String> YOUNGEST_AGE =
      Column.text("youngest_age", 10, "years a plant must have stood before it is honest");
  private static final Column<List<String>> TAKEN_ON =
      Column.list("taken_on", "kinds of units it is taken on: position, tray, lot, plant, plot")
          .required();
  private static final Column<String> PART =
      Column.text("part", 60, "part of the plant it is taken on");
  private static final Column<Boolean> DESCRIBED =
      Column.yesNo("described", "whether it belongs to the description in the dossier").required();

  private static final Set<String> UNIT_KINDS =
      Arrays.stream(UnitKind.values())
          .map(kind -> kind.name().toLowerCase(Locale.ROOT))
          .collect(Collectors.toUnmodifiableSet());

  private final Traits traits;

  TraitSheet(Traits traits) {
    super(
        5,
        "traits",
        CROP,
        TRAIT,
        NAME,
        KIND,
        UNIT,
        LOWEST,
        HIGHEST,
        DECIMALS,
        BETTER,
        WINDOW_FROM,
        WINDOW_TO,
        YOUNGEST_AGE,
        TAKEN_ON,
        PART,
        DESCRIBED);
    this.traits = traits;
  }

  @Override
  protected void apply(Rows rows) {
    rows.each(
        row ->
            traits.save(
                new Trait(
                    row.id(CROP),
                    row.the(TRAIT),
                    row.the(NAME),
                    row.the(KIND),
                    row.maybe(UNIT),
                    row.maybe(LOWEST),
                    row.maybe(HIGHEST),
                    row.orElse(DECIMALS, 0),
                    row.the(BETTER),
                    window(row),
                    row.maybe(YOUNGEST_AGE),
                    takenOn(row),
                    row.maybe(PART),
                    row.the(DESCRIBED))));
  }

  private static @Nullable Window window(Row row) {
    MonthDay from = row.maybe(WINDOW_FROM);
    MonthDay to = row.maybe(WINDOW_TO);
    if (from == null && to == null) {
      return null;
    }
    if (from == null || to == null) {
      throw row.refused(WINDOW_TO, "A window has a first and a last day, or neither.");
    }
    return new Window(from, to);
  }

  private static Set<String> takenOn(Row row) {
    Set<String> kinds = Set.copyOf(row.the(TAKEN_ON));
    if (!UNIT_KINDS.containsAll(kinds)) {
      throw row.refused(
          TAKEN_ON, "Write position, tray, lot, plant, plot or stock, blanks between.");
    }
    return kinds;
  }

  @Override
  protected String query() {
    return """
        select c.code, t.code, t.name, t.kind, t.unit, t.lowest, t.highest, t.decimals, t.better,
               t.window_from, t.window_until, t.youngest_age, t.taken_on, t.part, t.described
        from trait t join crop c on c.id = t.crop_id
        order by t.id
        """;
  }
}
