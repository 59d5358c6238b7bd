package trialwood.analysis.mixed;

import java.util.Arrays;

/**
 * Pairs of codes that occur together, numbered in their own order: by the first code, then by the
 * second.
 *
 * @param codes for each value the number of its pair
 * @param count how many pairs occur
 */
record Combination(int[] codes, int count) {

  static Combination of(int[] first, int[] second) {
    int width = 1 + Arrays.stream(second).max().orElse(0);
    long pairs = (1L + Arrays.stream(first).max().orElse(0)) * width;
    int[] codes = new int[first.length];
    if (pairs > 32L * first.length + 1024) {
      long[] keys = new long[first.length];
      Arrays.setAll(keys, i -> (long) first[i] * width + second[i]);
      long[] sorted = Arrays.stream(keys).sorted().distinct().toArray();
      Arrays.setAll(codes, i -> Arrays.binarySearch(sorted, keys[i]));
      return new Combination(codes, sorted.length);
    }
    int[] number = new int[(int) pairs];
    for (int i = 0; i < first.length; i++) {
      number[first[i] * width + second[i]] = 1;
    }
    int count = 0;
    for (int pair = 0; pair < number.length; pair++) {
      number[pair] = number[pair] == 0 ? -1 : count++;
    }
    Arrays.setAll(codes, i -> number[first[i] * width + second[i]]);
    return new Combination(codes, count);
  }
}
