package trialwood.analysis.reference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trialwood.analysis.Answer;
import trialwood.analysis.selection.BreedingValue;
import trialwood.analysis.selection.BreedingValues;
import trialwood.analysis.selection.InverseRelationships;
import trialwood.analysis.selection.Pedigree;
import trialwood.analysis.selection.Plant;
import trialwood.analysis.selection.PlantRecord;
import trialwood.analysis.selection.Relationships;

/** Pedigrees and breeding values: the second half of 09. */
final class Pedigrees implements Family {

  private final Map<String, Pedigree> pedigrees = new ConcurrentHashMap<>();
  private final Map<String, Answer<BreedingValues>> fits = new ConcurrentHashMap<>();

  @Override
  public Map<String, Function<Row, Object>> methods() {
    return Map.of(
        "inbreeding", row -> pedigree(row, "data").inbreeding(row.key()),
        "relationship_A", this::relationship,
        "relationship_A_inverse", this::inverse,
        "animal_model", this::breedingValue);
  }

  private Object relationship(Row row) {
    Pedigree pedigree = pedigree(row, "data");
    if (row.quantity().equals("log_determinant")) {
      return orNone(pedigree.logDeterminant());
    }
    String[] pair = row.key().split(":");
    return Relationships.of(pedigree, pair[0]).to(pair[1]);
  }

  private Object inverse(Row row) {
    String[] pair = row.key().split(":");
    return orNone(
        InverseRelationships.of(pedigree(row, "data"))
            .map(inverse -> inverse.at(pair[0], pair[1])));
  }

  private Object breedingValue(Row row) {
    return fits.computeIfAbsent(row.given(), given -> breedingValues(row))
        .value()
        .map(fit -> breedingValue(fit, row))
        .orElse(Double.NaN);
  }

  private static Object breedingValue(BreedingValues fit, Row row) {
    if (row.quantity().equals("fixed_effect")) {
      return fit.fixed().get(row.key());
    }
    BreedingValue plant = fit.of(row.key());
    return switch (row.quantity()) {
      case "ebv" -> plant.value();
      case "pev" -> orNone(plant.errorVariance());
      case "reliability" -> orNone(plant.reliability());
      case "accuracy_no_inbreeding_correction" ->
          Math.sqrt(1 - orNone(plant.errorVariance()) / plant.additiveVariance());
      default -> throw new UnknownRow(row);
    };
  }

  private Answer<BreedingValues> breedingValues(Row row) {
    DataFile data = row.data();
    double[] values = data.numbers(row.input("response"));
    List<String> plants = column(data, 0);
    List<Map<String, Double>> fixed = FixedEffects.of(row.input("fixed"), data);
    var records = new ArrayList<PlantRecord>();
    for (int i = 0; i < values.length; i++) {
      if (!Double.isNaN(values[i])) {
        records.add(new PlantRecord(plants.get(i), fixed.get(i), values[i]));
      }
    }
    return BreedingValues.of(
        pedigree(row, "pedigree"), records, row.number("var_additive"), row.number("var_residual"));
  }

  private Pedigree pedigree(Row row, String input) {
    return pedigrees.computeIfAbsent(
        row.input(input),
        name -> {
          DataFile data = row.data(input);
          List<String> mothers = column(data, 1);
          List<String> fathers = column(data, 2);
          var plants = new ArrayList<Plant>();
          for (String id : column(data, 0)) {
            int i = plants.size();
            plants.add(new Plant(id, known(mothers.get(i)), known(fathers.get(i))));
          }
          return Pedigree.of(plants);
        });
  }

  private static @Nullable String known(String parent) {
    return parent.isEmpty() || parent.equals("NA") ? null : parent;
  }

  /** A column by its place: the plant stands first, its parents after it. */
  private static List<String> column(DataFile data, int place) {
    return data.lines().stream().map(line -> line.get(place)).toList();
  }

  private static double orNone(Answer<Double> answer) {
    return answer.value().orElse(Double.NaN);
  }
}
