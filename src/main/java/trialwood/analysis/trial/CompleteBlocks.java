package trialwood.analysis.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Randomised complete blocks: every entry once in every block, each block in an order drawn anew.
 *
 * <p>Drawn with {@link Random}, whose sequence its specification fixes for every Java: the same
 * seed draws the same blocks for ever.
 *
 * <p>Source: Fisher, R. A. (1935) The Design of Experiments. Oliver and Boyd, Edinburgh
 */
public final class CompleteBlocks {

  private CompleteBlocks() {}

  /**
   * @param lot goes on being drawn from where several fields share one seed
   * @return for each block the entries, from 0, in the order in which they stand
   * @throws IllegalArgumentException if there is no entry, or no block
   */
  public static List<List<Integer>> draw(int entries, int blocks, Random lot) {
    if (entries < 1 || blocks < 1) {
      throw new IllegalArgumentException("A layout needs entries and blocks.");
    }
    List<List<Integer>> drawn = new ArrayList<>();
    for (int block = 0; block < blocks; block++) {
      List<Integer> order = new ArrayList<>(IntStream.range(0, entries).boxed().toList());
      Collections.shuffle(order, lot);
      drawn.add(List.copyOf(order));
    }
    return List.copyOf(drawn);
  }
}
