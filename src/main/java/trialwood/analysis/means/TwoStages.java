package trialwood.analysis.means;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import trialwood.analysis.Answer;
import trialwood.analysis.StudentBelief;

/**
 * A series of trials in two stages: adjusted means of each environment from its own blocks and with
 * its own error, then one model mean = environment + entry over all of them, each mean weighing one
 * over its squared standard error. The error over environments is what that second model leaves.
 *
 * <p>Source: Möhring, J. and Piepho, H.-P. (2009) Comparison of weighting in two-stage analysis of
 * plant breeding trials. Crop Science 49, 1977–1988
 *
 * @param environments first stage by environment, in alphabetical order
 * @param lacking environments without a first stage, each with its reason
 * @param overall second stage
 */
public record TwoStages(
    Map<String, Environment> environments, Map<String, String> lacking, LinearModel overall) {

  public TwoStages {
    environments = Collections.unmodifiableMap(new LinkedHashMap<>(environments));
    lacking = Collections.unmodifiableMap(new LinkedHashMap<>(lacking));
  }

  /**
   * One environment.
   *
   * @param model values = block + entry
   * @param means of the entries
   */
  public record Environment(LinearModel model, AdjustedMeans means) {}

  /**
   * Lacking if no environment has an answer, or the second stage has none.
   *
   * @param plots with the three factors
   * @throws IllegalArgumentException if the plots do not have them
   */
  public static Answer<TwoStages> of(
      PlotValues plots, String environment, String block, String entry) {
    var environments = new LinkedHashMap<String, Environment>();
    var lacking = new LinkedHashMap<String, String>();
    for (String name : new TreeSet<>(plots.levelsOf(environment))) {
      Answer<LinearModel> model = LinearModel.inBlocks(plots.at(environment, name), block, entry);
      model
          .value()
          .ifPresentOrElse(
              fit -> environments.put(name, new Environment(fit, fit.means(entry))),
              () -> lacking.put(name, model.lack().orElseThrow()));
    }
    if (environments.isEmpty()) {
      return Answer.lacking(
          "No environment has an error of its own, among them %s.".formatted(lacking.keySet()));
    }
    Answer<LinearModel> overall = overall(environments, environment, entry);
    return overall instanceof Answer.Known<LinearModel> known
        ? Answer.known(new TwoStages(environments, lacking, known.answer()))
        : Answer.lacking(overall.lack().orElseThrow());
  }

  private static Answer<LinearModel> overall(
      Map<String, Environment> environments, String environment, String entry) {
    var at = new ArrayList<String>();
    var entries = new ArrayList<String>();
    var beliefs = new ArrayList<StudentBelief>();
    environments.forEach(
        (name, stage) -> {
          for (String candidate : stage.means().names()) {
            stage
                .means()
                .of(candidate)
                .value()
                .ifPresent(
                    belief -> {
                      at.add(name);
                      entries.add(candidate);
                      beliefs.add(belief);
                    });
          }
        });
    return LinearModel.of(
        PlotValues.of(beliefs.stream().mapToDouble(StudentBelief::estimate).toArray())
            .by(environment, at)
            .by(entry, entries)
            .weighing(weights(beliefs)),
        environment,
        entry);
  }

  private static double[] weights(List<StudentBelief> beliefs) {
    return beliefs.stream()
        .mapToDouble(belief -> 1 / (belief.standardError() * belief.standardError()))
        .toArray();
  }
}
