package trialwood.analysis.means;

import java.util.List;

/**
 * The levels that occur in the plots, in alphabetical order, and the level of each plot by its
 * place in that order.
 */
record Factor(String name, List<String> levels, int[] ofPlot) {

  static Factor of(PlotValues plots, String name) {
    List<String> all = plots.levelsOf(name);
    List<String> levels = all.stream().distinct().sorted().toList();
    return new Factor(name, levels, all.stream().mapToInt(levels::indexOf).toArray());
  }

  int count() {
    return levels.size();
  }
}
