package trialwood.container;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The root ball of a pot, 0 to 5, knocked out and looked at. A house scale in the manner of the
 * bench's root score; common practice, no source.
 */
public final class RootBall {

  private static final List<String> WORDS =
      List.of(
          "dead or rotten",
          "medium falls off, few roots",
          "half of the medium falls off",
          "holds on one side, or falls at a knock",
          "holds all round, white tips",
          "holds all round, no root circles");

  private RootBall() {}

  /** Every score with its words, from 0 up. */
  public static Map<Integer, String> scores() {
    Map<Integer, String> scores = new LinkedHashMap<>();
    for (int score = 0; score < WORDS.size(); score++) {
      scores.put(score, WORDS.get(score));
    }
    return scores;
  }

  static boolean isScore(int score) {
    return score >= 0 && score < WORDS.size();
  }

  public static String words(int score) {
    return WORDS.get(score);
  }
}
