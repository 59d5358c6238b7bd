package trialwood.container.web;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.Interval;
import trialwood.analysis.growth.GrowthCurve;
import trialwood.analysis.growth.Reading;
import trialwood.analysis.means.PlantSample;
import trialwood.container.web.PlantBook.Measured;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;

/**
 * What the numbered plants of a lot gained a week, plant by plant, and the plants of its checks
 * beside it.
 *
 * @param lines by trait, the lot before its checks; empty where no plant was measured twice
 */
record GrowthTable(List<Line> lines) {

  private static final double LEVEL = 0.95;
  private static final double DAYS_A_WEEK = 7;
  private static final Set<String> LENGTHS = Set.of("mm", "cm", "m");
  private static final String WHOLE_PLANT = "whole plant";

  /**
   * A trait over the plants of one lot that were measured there and on an earlier day, there or in
   * the lot they were shifted from.
   *
   * @param own whether it is the lot itself and not a check's
   * @param from the earliest first measuring of a plant
   * @param until the latest last one
   * @param perWeek (last − first) ÷ weeks between, of each plant, in the trait's unit
   * @param last the last value of the same plants
   */
  record Line(
      Trait trait,
      String lot,
      boolean own,
      LocalDate from,
      LocalDate until,
      PlantSample perWeek,
      PlantSample last) {

    public String unit() {
      return Objects.requireNonNullElse(trait.unit(), "");
    }

    public @Nullable Interval interval() {
      return belief().value().orElse(null);
    }

    /** Why there is no interval, where there is none. */
    public @Nullable String noInterval() {
      return belief().lack().orElse(null);
    }

    public @Nullable Double cv() {
      return last.cv().value().orElse(null);
    }

    /** Why there is no coefficient of variation, where there is none. */
    public @Nullable String noCv() {
      return last.cv().lack().orElse(null);
    }

    private Answer<Interval> belief() {
      return perWeek.beliefOfMean().map(belief -> belief.interval(LEVEL));
    }
  }

  /**
   * @param lots labels by lot, the lot itself first
   * @param measured on the plants of these lots, a plant's days in their order
   */
  static GrowthTable of(Map<UUID, String> lots, List<Measured> measured, List<Trait> traits) {
    UUID own = lots.keySet().iterator().next();
    Map<UUID, Map<UUID, List<Measured>>> byTrait =
        measured.stream()
            .collect(
                Collectors.groupingBy(Measured::traitId, Collectors.groupingBy(Measured::lotId)));
    return new GrowthTable(
        traits.stream()
            .filter(GrowthTable::grows)
            .filter(trait -> byTrait.containsKey(trait.id()))
            .flatMap(
                trait -> {
                  Map<UUID, List<Measured>> byLot = byTrait.get(trait.id());
                  List<Line> lines =
                      lots.entrySet().stream()
                          .map(
                              lot ->
                                  line(
                                      trait,
                                      lot.getValue(),
                                      lot.getKey().equals(own),
                                      byLot.getOrDefault(lot.getKey(), List.of())))
                          .filter(Objects::nonNull)
                          .toList();
                  return lines.stream().anyMatch(Line::own) ? lines.stream() : null;
                })
            .toList());
  }

  /** A length of the whole plant; leaves and flowers are others every year. */
  private static boolean grows(Trait trait) {
    return trait.kind() == TraitKind.MEASUREMENT
        && LENGTHS.contains(Objects.requireNonNullElse(trait.unit(), ""))
        && WHOLE_PLANT.equalsIgnoreCase(Objects.requireNonNullElse(trait.part(), WHOLE_PLANT));
  }

  private static @Nullable Line line(
      Trait trait, String lot, boolean own, List<Measured> measured) {
    Collection<List<Measured>> plants =
        measured.stream()
            .collect(
                Collectors.groupingBy(Measured::plantId, LinkedHashMap::new, Collectors.toList()))
            .values()
            .stream()
            .filter(plant -> plant.size() > 1 && plant.get(plant.size() - 1).here())
            .toList();
    if (plants.isEmpty()) {
      return null;
    }
    List<LocalDate> days =
        plants.stream().flatMap(List::stream).map(Measured::onDate).sorted().toList();
    List<GrowthCurve> curves = plants.stream().map(GrowthTable::curve).toList();
    return new Line(
        trait,
        lot,
        own,
        days.get(0),
        days.get(days.size() - 1),
        PlantSample.of(
            curves.stream().map(curve -> curve.absoluteRate().value().orElseThrow()).toList()),
        PlantSample.of(curves.stream().map(curve -> curve.last().value()).toList()));
  }

  /** In weeks. */
  private static GrowthCurve curve(List<Measured> plant) {
    return GrowthCurve.of(
        plant.stream()
            .map(
                seen ->
                    new Reading(
                        seen.onDate().toEpochDay() / DAYS_A_WEEK, seen.number().doubleValue()))
            .toList());
  }
}
