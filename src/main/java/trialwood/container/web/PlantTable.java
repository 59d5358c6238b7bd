package trialwood.container.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Interval;
import trialwood.analysis.means.PlantSample;
import trialwood.container.web.PlantBook.Standing;
import trialwood.container.web.PlantBook.Value;
import trialwood.crop.Better;
import trialwood.crop.Trait;
import trialwood.web.IntervalPicture;
import trialwood.web.IntervalPicture.Scale;

/** Numbered plants down, measured traits across, each with its last value in the lot. */
record PlantTable(List<Column> columns, List<Row> rows) {

  private static final double LEVEL = 0.95;

  /** A plant; a cell is null where the trait was never recorded on it. */
  record Row(String label, int number, List<@Nullable Value> cells) {}

  /**
   * A trait over the lot's plants.
   *
   * @param check the same of the check's plants
   * @param picture the mean with its interval against the check's mean
   */
  record Column(
      Trait trait,
      PlantSample sample,
      @Nullable PlantSample check,
      @Nullable IntervalPicture picture) {

    public String unit() {
      return Objects.requireNonNullElse(trait.unit(), "");
    }

    public @Nullable Double sd() {
      return sample.sd().value().orElse(null);
    }

    public @Nullable Double cv() {
      return sample.cv().value().orElse(null);
    }
  }

  /**
   * @param standing the plants that stand in the lot, measured or not
   * @param values of the lot and of its checks' lots
   */
  static PlantTable of(UUID lot, List<Standing> standing, List<Value> values, List<Trait> traits) {
    List<Column> columns = new ArrayList<>();
    for (Trait trait : traits) {
      List<Double> mine = numbers(values, trait, true, lot);
      if (trait.kind().isNumber() && !mine.isEmpty()) {
        List<Double> its = numbers(values, trait, false, lot);
        PlantSample check = its.isEmpty() ? null : PlantSample.of(its);
        PlantSample sample = PlantSample.of(mine);
        columns.add(new Column(trait, sample, check, picture(trait, sample, check)));
      }
    }
    Map<UUID, Standing> plants = new LinkedHashMap<>();
    standing.forEach(plant -> plants.put(plant.plantId(), plant));
    values.stream()
        .filter(value -> value.lotId().equals(lot))
        .forEach(
            value ->
                plants.putIfAbsent(
                    value.plantId(),
                    new Standing(value.plantId(), value.plant(), value.plantNumber())));
    List<Row> rows =
        plants.values().stream()
            .map(
                plant -> new Row(plant.label(), plant.number(), cells(plant, columns, lot, values)))
            .toList();
    return new PlantTable(columns, rows);
  }

  private static List<@Nullable Value> cells(
      Standing plant, List<Column> columns, UUID lot, List<Value> values) {
    List<@Nullable Value> cells = new ArrayList<>();
    for (Column column : columns) {
      cells.add(
          values.stream()
              .filter(value -> value.lotId().equals(lot))
              .filter(value -> value.plantId().equals(plant.plantId()))
              .filter(value -> value.traitId().equals(column.trait().id()))
              .findFirst()
              .orElse(null));
    }
    return cells;
  }

  private static List<Double> numbers(List<Value> values, Trait trait, boolean mine, UUID lot) {
    List<Double> numbers = new ArrayList<>();
    for (Value value : values) {
      if (value.lotId().equals(lot) == mine
          && value.traitId().equals(trait.id())
          && value.number() != null) {
        numbers.add(value.number().doubleValue());
      }
    }
    return numbers;
  }

  private static @Nullable IntervalPicture picture(
      Trait trait, PlantSample sample, @Nullable PlantSample check) {
    Interval interval =
        sample.beliefOfMean().value().map(belief -> belief.interval(LEVEL)).orElse(null);
    if (interval == null || check == null || interval.width() == 0) {
      return null;
    }
    double low = Math.min(interval.low(), check.mean());
    double high = Math.max(interval.high(), check.mean());
    double room = (high - low) / 4;
    IntervalPicture picture =
        IntervalPicture.on(
                new Scale(
                    low - room,
                    high + room,
                    trait.decimals() + 1,
                    Objects.requireNonNullElse(trait.unit(), "")))
            .between(interval.low(), interval.high())
            .showing(sample.mean());
    double line = Math.round(check.mean() * 10) / 10.0;
    return trait.better() == Better.LOWER ? picture.stayingUnder(line) : picture.reaching(line);
  }
}
