package trialwood.web;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * The records behind a computed number, as "How this was computed" lists them: the address of each
 * record's page, and its words.
 */
public final class RecordsUsed {

  private RecordsUsed() {}

  /** In the order given; a page named twice is listed once. */
  public static <T> Map<String, String> of(
      Collection<T> records, Function<T, String> address, Function<T, String> words) {
    Map<String, String> used = new LinkedHashMap<>();
    records.forEach(record -> used.putIfAbsent(address.apply(record), words.apply(record)));
    return used;
  }
}
