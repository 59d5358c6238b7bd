package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** Made-up trials for the tests of means: entries by blocks, with gaps. */
record Layouts(SplittableRandom random, int entries, int blocks) {

  static Layouts seeded(long seed) {
    var random = new SplittableRandom(seed);
    return new Layouts(random, random.nextInt(3, 9), random.nextInt(3, 6));
  }

  List<String> entryOfPlot() {
    return IntStream.range(0, entries * blocks).mapToObj(i -> "E" + i % entries).toList();
  }

  List<String> blockOfPlot() {
    return IntStream.range(0, entries * blocks).mapToObj(i -> "B" + i / entries).toList();
  }

  /** Values about 50; every seventh plot or so of the later blocks is missing. */
  double[] values() {
    double[] values = new double[entries * blocks];
    for (int i = 0; i < values.length; i++) {
      boolean missing = i >= 2 * entries && random.nextInt(7) == 0;
      values[i] = missing ? Double.NaN : 50 + 3 * random.nextGaussian() + i % entries;
    }
    return values;
  }

  PlotValues plots(double... values) {
    return PlotValues.of(values).by("block", blockOfPlot()).by("entry", entryOfPlot());
  }

  static LinearModel known(trialwood.analysis.Answer<LinearModel> model) {
    return model.value().orElseThrow();
  }

  static List<String> repeated(int times, String... levels) {
    var all = new ArrayList<String>();
    for (String level : levels) {
      for (int i = 0; i < times; i++) {
        all.add(level);
      }
    }
    return all;
  }
}
