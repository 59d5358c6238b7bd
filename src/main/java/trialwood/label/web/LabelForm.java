package trialwood.label.web;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trialwood.web.Entry;

/**
 * Which labels are printed, and on what.
 *
 * @param start place on the first sheet
 * @param first number of the first label in the list, from 1
 * @param last number of the last
 * @param copies of each
 */
record LabelForm(
    @Nullable String format,
    @Nullable String printer,
    @Nullable String start,
    @Nullable String first,
    @Nullable String last,
    @Nullable String copies) {

  private static final int MOST = 2000;

  /**
   * A choice that can be carried out.
   *
   * @param from index of the first in the list
   * @param until index behind the last
   */
  record Choice(String format, String printer, int start, int from, int until, int copies) {

    /** The part of a list that was chosen, each as often as it is wanted. */
    <T> List<T> of(List<T> all) {
      return all.subList(from, until).stream()
          .flatMap(one -> Collections.nCopies(copies, one).stream())
          .toList();
    }
  }

  /**
   * @throws trialwood.record.Refused when something cannot be read, or the list has no such part
   */
  Choice choice(int listed) {
    Entry entry = new Entry();
    String paper = entry.words("format", format, "Pick the paper.");
    String on = entry.words("printer", printer, "Pick the printer.");
    int at = entry.count("start", start);
    int from = entry.count("first", first);
    int to = entry.count("last", last);
    int times = entry.count("copies", copies);
    entry.orRefuse();
    if (from < 1 || from > listed) {
      entry.wrong("first", "The list runs from 1 to %d.".formatted(listed));
    }
    if (to < from || to > listed) {
      entry.wrong("last", "Type a number from the first, %d, to %d.".formatted(from, listed));
    }
    entry.orRefuse();
    if (times < 1 || (long) times * (to - from + 1) > MOST) {
      entry.wrong(
          "copies", "Print one copy or more, and at most %d labels at once.".formatted(MOST));
    }
    entry.orRefuse();
    return new Choice(paper, on, at, from - 1, to, times);
  }
}
