package trialwood.trial.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.crop.Trait;
import trialwood.observation.NoneBecause;
import trialwood.observation.Reading;
import trialwood.record.Refused;
import trialwood.web.Form;
import trialwood.web.Typed;

/**
 * A sheet as it comes back from the field: one row a plot, one value a trait.
 *
 * @param on the day of the looks
 * @param by whose initials
 */
record SheetForm(
    @Nullable UUID formKey, @Nullable String on, @Nullable String by, @Nullable List<Row> rows)
    implements Form {

  /** The values of one plot, in the order of the traits. */
  record Row(@Nullable UUID plot, @Nullable List<String> values) {

    String value(int trait) {
      return values == null || trait >= values.size() || values.get(trait) == null
          ? ""
          : values.get(trait).strip();
    }
  }

  /** A sheet to fill, with nothing in it. */
  static SheetForm empty(
      List<TrialBook.PlotRow> plots, int traits, String on, @Nullable String by) {
    List<Row> rows = new ArrayList<>();
    plots.forEach(
        plot -> rows.add(new Row(plot.unitId(), new ArrayList<>(Collections.nCopies(traits, "")))));
    return new SheetForm(UUID.randomUUID(), on, by, rows);
  }

  /** Puts back what was typed when nothing could be stored. */
  void fill(SheetForm typed, List<TrialBook.PlotRow> plots) {
    for (int row = 0; row < plots.size(); row++) {
      List<String> values = rows.get(row).values();
      for (int trait = 0; trait < values.size(); trait++) {
        values.set(trait, typed.typed(plots.get(row).unitId(), trait));
      }
    }
  }

  /** What was typed for the plot. */
  String typed(UUID plot, int trait) {
    return rows == null
        ? ""
        : rows.stream()
            .filter(row -> plot.equals(row.plot()))
            .findFirst()
            .map(row -> row.value(trait))
            .orElse("");
  }

  /**
   * Reads a value as the trait has it, or the reason why there is none.
   *
   * @throws Refused when neither can be made of it
   */
  static Reading read(Trait trait, String typed, LocalDate today) {
    for (NoneBecause reason : NoneBecause.values()) {
      if (reason.word().equals(typed.toLowerCase(Locale.ROOT))) {
        return Reading.none(reason);
      }
    }
    return switch (trait.kind()) {
      case MEASUREMENT, SCORE, COUNT ->
          Reading.of(orRefuse(Typed.decimal(typed), typed, "a number like 8.5"));
      case DATE -> Reading.of(orRefuse(Typed.date(typed, today), typed, "a day like 14 May 2026"));
      case COLOUR, TEXT -> Reading.of(typed);
    };
  }

  private static <T> T orRefuse(Optional<T> read, String typed, String wanted) {
    return read.orElseThrow(
        () ->
            new Refused(
                "value", "“%s” is not %s, nor why there is none.".formatted(typed, wanted)));
  }
}
