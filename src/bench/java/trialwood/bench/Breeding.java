package trialwood.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trialwood.analysis.selection.FamilyCount;
import trialwood.analysis.selection.FamilyRates;
import trialwood.analysis.selection.Pedigree;
import trialwood.analysis.selection.Plant;

/** Families and pedigrees. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Breeding {

  private static final int FAMILIES = 500;
  private static final int ACCESSIONS = 50_000;
  private static final int FOUNDERS = 200;

  private List<FamilyCount> families = List.of();
  private List<Plant> plants = List.of();

  @Setup
  public void breed() {
    var numbers = new SplittableRandom(3);
    var counts = new ArrayList<FamilyCount>();
    for (int family = 0; family < FAMILIES; family++) {
      double rate = 0.1 + 0.5 * numbers.nextDouble();
      int hits = 0;
      for (int seedling = 0; seedling < 30; seedling++) {
        hits += numbers.nextDouble() < rate ? 1 : 0;
      }
      counts.add(new FamilyCount("F" + family, hits, 30));
    }
    families = List.copyOf(counts);
    var bred = new ArrayList<Plant>();
    for (int plant = 0; plant < ACCESSIONS; plant++) {
      boolean founder = plant < FOUNDERS;
      bred.add(
          new Plant(
              "P" + plant,
              founder ? null : "P" + numbers.nextInt(plant),
              founder ? null : "P" + numbers.nextInt(plant)));
    }
    plants = List.copyOf(bred);
  }

  /** A beta-binomial prior over 500 families, and each family's rate drawn to it. */
  @Benchmark
  public FamilyRates familyRates() {
    return FamilyRates.byLikelihood(families).value().orElseThrow();
  }

  /** Inbreeding of 50,000 accessions, parents drawn from all before them. */
  @Benchmark
  public Pedigree inbreeding() {
    return Pedigree.of(plants);
  }
}
