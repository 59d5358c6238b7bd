package trialwood.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import trialwood.analysis.trial.CompleteBlocks;

/**
 * A field of complete blocks: every entry once in every block, in an order drawn by lot. Blocks lie
 * one behind the other, and the plots are walked in a serpentine: odd rows from left to right, even
 * rows back. The same seed draws the same field for ever; see {@link CompleteBlocks}.
 *
 * @param places in walking order
 */
public record Layout(List<Place> places) {

  /** Longest row of one block, so that the plots of a block lie close together. */
  private static final int LONGEST_ROW = 12;

  /**
   * Where one entry stands.
   *
   * @param row from 1 at the front
   * @param column from 1 at the left
   * @param entry its number among the entries, from 0
   */
  public record Place(int block, int row, int column, int entry) {}

  public Layout {
    places = List.copyOf(places);
  }

  /**
   * One field for each site, each drawn anew.
   *
   * @throws IllegalArgumentException if there is no entry, or no block
   */
  public static List<Layout> draw(int sites, int entries, int blocks, long seed) {
    Random lot = new Random(seed);
    return IntStream.range(0, sites).mapToObj(site -> field(entries, blocks, lot)).toList();
  }

  private static Layout field(int entries, int blocks, Random lot) {
    List<List<Integer>> orders = CompleteBlocks.draw(entries, blocks, lot);
    int rows = (entries + LONGEST_ROW - 1) / LONGEST_ROW;
    int width = (entries + rows - 1) / rows;
    List<Place> places = new ArrayList<>();
    for (int block = 0; block < blocks; block++) {
      List<Integer> order = orders.get(block);
      for (int nth = 0; nth < entries; nth++) {
        int row = block * rows + nth / width + 1;
        int along = nth % width + 1;
        places.add(
            new Place(block + 1, row, row % 2 == 1 ? along : width + 1 - along, order.get(nth)));
      }
    }
    return new Layout(places);
  }
}
