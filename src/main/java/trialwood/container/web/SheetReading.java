package trialwood.container.web;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import trialwood.container.PlantValues;
import trialwood.container.web.SheetForm.Line;
import trialwood.crop.Trait;
import trialwood.observation.NoneBecause;
import trialwood.observation.Reading;
import trialwood.record.Problem;
import trialwood.web.Typed;

/**
 * What a measuring sheet says, line by line. An empty box says nothing.
 *
 * @param good lines in which every box could be read
 * @param wrong what could not be read, by plant
 */
record SheetReading(List<PlantValues> good, Map<UUID, List<Problem>> wrong) {

  static SheetReading of(SheetForm form, List<Trait> columns, Set<UUID> plants) {
    List<PlantValues> good = new ArrayList<>();
    Map<UUID, List<Problem>> wrong = new LinkedHashMap<>();
    for (Line line : form.lines()) {
      if (line.plant() != null && plants.contains(line.plant())) {
        read(line.plant(), line, columns, good, wrong);
      }
    }
    return new SheetReading(good, wrong);
  }

  private static void read(
      UUID plant,
      Line line,
      List<Trait> columns,
      List<PlantValues> good,
      Map<UUID, List<Problem>> wrong) {
    Map<UUID, Reading> readings = new LinkedHashMap<>();
    List<Problem> problems = new ArrayList<>();
    for (int at = 0; at < Math.min(columns.size(), line.cells().size()); at++) {
      Trait trait = columns.get(at);
      String typed = Boxes.text(line.cells().get(at));
      if (typed.isEmpty() || trait.id() == null) {
        continue;
      }
      Optional<Reading> reading = reading(typed);
      if (reading.isPresent()) {
        readings.put(trait.id(), reading.get());
      } else {
        problems.add(new Problem(trait.code(), noNumber(typed)));
      }
    }
    String found = Boxes.words(line.found());
    if (line.isChecked() && found == null && !readings.isEmpty()) {
      problems.add(
          new Problem(columns.get(0).code(), "Say in a word or two what you found on this plant."));
    }
    if (!problems.isEmpty()) {
      wrong.put(plant, problems);
    } else if (!readings.isEmpty()) {
      good.add(new PlantValues(plant, readings, line.isChecked() ? found : null));
    }
  }

  static String noNumber(String typed) {
    return "“%s” is no number: write 61,5 or 61.5, or why there is none, such as dead."
        .formatted(typed);
  }

  static Optional<Reading> reading(String typed) {
    Optional<BigDecimal> number = Typed.decimal(typed);
    return number.isPresent() ? number.map(Reading::of) : because(typed).map(Reading::none);
  }

  /** The one reason that begins like this; a word that begins several says none of them. */
  private static Optional<NoneBecause> because(String typed) {
    String beginning = typed.toLowerCase(Locale.ROOT);
    List<NoneBecause> meant =
        Arrays.stream(NoneBecause.values())
            .filter(because -> because.word().startsWith(beginning))
            .toList();
    return meant.size() == 1 ? Optional.of(meant.get(0)) : Optional.empty();
  }
}
