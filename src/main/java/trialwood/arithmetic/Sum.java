package trialwood.arithmetic;

import java.util.List;
import trialwood.record.Refused;

/** One sum: what it asks for, and what comes out. */
interface Sum {

  /** In its address. */
  String key();

  /** What it answers, as a title. */
  String title();

  List<Box> boxes();

  /**
   * @throws Refused with a sentence for each box that cannot be computed with
   */
  Result work(Typing typed);

  /** How it is computed, in a sentence. */
  String method();

  String source();

  /** Whether hormones are handled, so that the caution has to stand beside it. */
  default boolean isOfHormones() {
    return false;
  }
}
