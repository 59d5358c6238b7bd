package trialwood.analysis.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trialwood.analysis.Answer;
import trialwood.analysis.ChiSquareTest;
import trialwood.analysis.Maximum;

/**
 * Fits {@link TimeFit}: which shape, and whether a fraction of the cuttings never roots.
 *
 * @param shape of the times
 * @param someNeverRoot whether each treatment has a never-root fraction of its own
 */
public record TimeModel(TimeShape shape, boolean someNeverRoot) {

  /** A logit of the never-root fraction past which it is 0. */
  private static final double NOTHING = -15;

  /** Every cutting roots in the end. */
  public static TimeModel of(TimeShape shape) {
    return new TimeModel(shape, false);
  }

  /** A fraction of the cuttings never roots. */
  public static TimeModel withNeverRooting(TimeShape shape) {
    return new TimeModel(shape, true);
  }

  /** The fit of one batch; lacking like {@link #fit(List)}. */
  public Answer<TimeFit> fitOne(List<RootedBetween> looks) {
    return looks.isEmpty()
        ? Answer.lacking("Nobody has looked.")
        : fit(List.of(new TreatmentTimes("all", looks)));
  }

  /**
   * The fit of several treatments. Lacking where the looks cannot tell location and scale: nothing
   * rooted, everything had rooted at the first look, or all roots of every treatment may have come
   * on one day.
   *
   * @param treatments the baseline first
   */
  public Answer<TimeFit> fit(List<TreatmentTimes> treatments) {
    return fit(treatments, false);
  }

  /**
   * Do the treatments root at the same time? The likelihood ratio against one location for all, on
   * one degree of freedom fewer than treatments; never-root fractions stay each treatment's own.
   */
  public Answer<ChiSquareTest> test(List<TreatmentTimes> treatments) {
    if (treatments.size() < 2) {
      return Answer.lacking("A comparison needs at least two treatments.");
    }
    Answer<TimeFit> apart = fit(treatments, false);
    Answer<TimeFit> together = fit(treatments, true);
    return apart instanceof Answer.Known<TimeFit> larger
            && together instanceof Answer.Known<TimeFit> smaller
        ? Answer.known(
            ChiSquareTest.ofLikelihoods(
                larger.answer().logLikelihood(),
                smaller.answer().logLikelihood(),
                treatments.size() - 1))
        : Answer.lacking(apart.lack().or(together::lack).orElse("The fit did not settle."));
  }

  private Answer<TimeFit> fit(List<TreatmentTimes> treatments, boolean oneLocation) {
    List<TreatmentTimes> places =
        oneLocation
            ? List.of(
                new TreatmentTimes(
                    "all", treatments.stream().flatMap(group -> group.looks().stream()).toList()))
            : treatments;
    Optional<String> lack = lack(places);
    if (lack.isPresent()) {
      return Answer.lacking(lack.get());
    }
    boolean[] hasNever = new boolean[treatments.size()];
    for (int g = 0; g < hasNever.length; g++) {
      hasNever[g] = someNeverRoot && treatments.get(g).unrooted() > 0;
    }
    for (int round = 0; round <= treatments.size(); round++) {
      var likelihood = new TimeLikelihood(shape, treatments, oneLocation, hasNever);
      double[] start = start(likelihood, treatments, places);
      if (!(Maximum.of(likelihood::at, start) instanceof Answer.Known<Maximum> found)) {
        return Answer.lacking("The fit did not settle.");
      }
      List<Double> at = found.answer().at();
      if (!dropVanished(hasNever, likelihood, at)) {
        return Answer.known(result(treatments, likelihood, found.answer()));
      }
    }
    return Answer.lacking("The fit did not settle.");
  }

  private TimeFit result(
      List<TreatmentTimes> treatments, TimeLikelihood likelihood, Maximum maximum) {
    List<Double> at = maximum.at();
    var locations = new ArrayList<Double>();
    var never = new ArrayList<Double>();
    for (int g = 0; g < treatments.size(); g++) {
      int index = likelihood.never(g);
      locations.add(at.get(likelihood.location(g)));
      never.add(index < 0 ? 0 : 1 / (1 + Math.exp(-at.get(index))));
    }
    return new TimeFit(
        shape,
        treatments.stream().map(TreatmentTimes::treatment).toList(),
        List.copyOf(locations),
        at.get(likelihood.logScale()),
        List.copyOf(never),
        maximum.value(),
        maximum.covariance());
  }

  private static boolean dropVanished(
      boolean[] hasNever, TimeLikelihood likelihood, List<Double> at) {
    boolean dropped = false;
    for (int g = 0; g < hasNever.length; g++) {
      if (hasNever[g] && at.get(likelihood.never(g)) < NOTHING) {
        hasNever[g] = false;
        dropped = true;
      }
    }
    return dropped;
  }

  private double[] start(
      TimeLikelihood likelihood, List<TreatmentTimes> treatments, List<TreatmentTimes> places) {
    double[] start = new double[likelihood.parameters()];
    double squares = 0;
    double all = 0;
    for (int place = 0; place < places.size(); place++) {
      double sum = 0;
      double n = 0;
      for (RootedBetween look : counted(places.get(place))) {
        sum += look.cuttings() * guess(look);
        n += look.cuttings();
      }
      start[place] = sum / n;
      for (RootedBetween look : counted(places.get(place))) {
        squares += look.cuttings() * Math.pow(guess(look) - start[place], 2);
      }
      all += n;
    }
    start[likelihood.logScale()] = Math.log(Math.max(0.2, Math.sqrt(squares / all)));
    for (int g = 0; g < treatments.size(); g++) {
      if (likelihood.never(g) >= 0) {
        double share = Math.min(0.95, Math.max(0.02, 0.8 * treatments.get(g).unrooted()));
        start[likelihood.never(g)] = Math.log(share / (1 - share));
      }
    }
    return start;
  }

  /** A day for a first guess: the middle of the interval, or half as long again. */
  private static double guess(RootedBetween look) {
    double day =
        look.rooted() ? (look.after() + look.by()) / 2 : 1.5 * Math.max(look.after(), 1e-3);
    return Math.log(day);
  }

  /** The looks that speak of times: with a never-root fraction only those that saw roots. */
  private List<RootedBetween> counted(TreatmentTimes group) {
    return someNeverRoot
        ? group.looks().stream().filter(RootedBetween::rooted).toList()
        : group.looks();
  }

  /** Why location and scale cannot be told. */
  private Optional<String> lack(List<TreatmentTimes> places) {
    if (places.isEmpty()) {
      return Optional.of("Nobody has looked.");
    }
    boolean spreadSeen = false;
    for (TreatmentTimes place : places) {
      if (place.looks().stream().noneMatch(RootedBetween::rooted)) {
        return Optional.of("Nothing has rooted" + where(place, places));
      }
      List<RootedBetween> looks = counted(place);
      double latestStart = looks.stream().mapToDouble(RootedBetween::after).max().orElseThrow();
      double firstEnd = looks.stream().mapToDouble(RootedBetween::by).min().orElseThrow();
      if (latestStart == 0) {
        return Optional.of("All had rooted at the first look" + where(place, places));
      }
      spreadSeen |= latestStart >= firstEnd;
    }
    return spreadSeen
        ? Optional.empty()
        : Optional.of("All may have rooted on one day: the looks show no spread.");
  }

  private static String where(TreatmentTimes place, List<TreatmentTimes> places) {
    return places.size() == 1 ? "." : " in " + place.treatment() + ".";
  }
}
