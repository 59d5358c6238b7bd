package trialwood.analysis.mixed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.stream.IntStream;

/** Invented plots for the tests: entries at sites in seasons and blocks, some of them lost. */
final class Field {

  record Plot(int entry, int site, int season, int block) {}

  private final List<Plot> plots;
  private final double[] values;

  private Field(List<Plot> plots, double[] values) {
    this.plots = plots;
    this.values = values;
  }

  /** Every entry in every block of every site and season; a share of the plots is lost. */
  static Field drawn(
      SplittableRandom random, int entries, int sites, int seasons, int blocks, double lost) {
    var plots = new ArrayList<Plot>();
    for (int site = 0; site < sites; site++) {
      for (int season = 0; season < seasons; season++) {
        for (int block = 0; block < blocks; block++) {
          for (int entry = 0; entry < entries; entry++) {
            if (random.nextDouble() >= lost) {
              plots.add(new Plot(entry, site, season, block));
            }
          }
        }
      }
    }
    double[] entry = effects(random, entries, 3);
    double[] site = effects(random, sites, 4);
    double[] place = effects(random, sites * seasons, 2);
    double[] cell = effects(random, entries * sites, 1.5);
    double[] values =
        plots.stream()
            .mapToDouble(
                plot ->
                    50
                        + entry[plot.entry()]
                        + site[plot.site()]
                        + place[plot.site() * seasons + plot.season()]
                        + cell[plot.entry() * sites + plot.site()]
                        + random.nextGaussian(0, 1.2))
            .toArray();
    return new Field(plots, values);
  }

  private static double[] effects(SplittableRandom random, int levels, double spread) {
    return IntStream.range(0, levels).mapToDouble(i -> random.nextGaussian(0, spread)).toArray();
  }

  double[] values() {
    return values.clone();
  }

  List<Plot> plots() {
    return plots;
  }

  Factor entry() {
    return by("entry", plot -> "E" + plot.entry());
  }

  Factor site() {
    return by("site", plot -> "S" + plot.site());
  }

  /** A site in a season. */
  Factor place() {
    return by("place", plot -> plot.site() + "/" + plot.season());
  }

  /** A block of a site in a season. */
  Factor block() {
    return by("block", plot -> plot.site() + "/" + plot.season() + "/" + plot.block());
  }

  Factor entryAtSite() {
    return Factor.crossed(entry(), site());
  }

  Factor by(String name, Function<Plot, String> label) {
    return Factor.of(name, plots.stream().map(label).toList());
  }

  /** Mean square between the levels of a factor about the levels of a coarser one. */
  double meanSquare(Factor fine, Factor coarse) {
    double[] high = levelMeans(fine);
    double[] low = levelMeans(coarse);
    double sum = 0;
    for (int i = 0; i < values.length; i++) {
      double off = high[fine.codes()[i]] - low[coarse.codes()[i]];
      sum += off * off;
    }
    return sum / (fine.levels().size() - coarse.levels().size());
  }

  Factor all() {
    return by("all", plot -> "all");
  }

  Factor each() {
    return Factor.of("plot", IntStream.range(0, values.length).mapToObj(i -> "" + i).toList());
  }

  double mean() {
    return Arrays.stream(values).average().orElseThrow();
  }

  double[] levelMeans(Factor factor) {
    double[] sums = new double[factor.levels().size()];
    int[] counts = new int[sums.length];
    for (int i = 0; i < values.length; i++) {
      sums[factor.codes()[i]] += values[i];
      counts[factor.codes()[i]]++;
    }
    for (int level = 0; level < sums.length; level++) {
      sums[level] /= counts[level];
    }
    return sums;
  }

  /** Groups of these sizes, one after the other. */
  static Factor groups(int... sizes) {
    var labels = new ArrayList<String>();
    for (int group = 0; group < sizes.length; group++) {
      labels.addAll(Collections.nCopies(sizes[group], "g" + group));
    }
    return Factor.of("group", labels);
  }
}
