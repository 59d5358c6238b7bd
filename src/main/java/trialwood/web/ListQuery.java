package trialwood.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a list shows: text looked for, filters, order, page. It reads itself from the address and
 * writes itself back with one thing changed, so that links keep the rest and Back returns to the
 * same list. Whatever the address holds that makes no sense is left out, never refused.
 *
 * @param text looked for in the list's own way; empty for all
 * @param filters by name, only those that are set
 * @param sort the column's key, empty for the list's own order
 * @param page from 1
 * @param size rows a page
 */
public record ListQuery(
    String text, Map<String, String> filters, String sort, boolean descending, int page, int size) {

  /** Rows a page unless the address asks otherwise. */
  public static final int USUAL_SIZE = 50;

  private static final int LARGEST_SIZE = 500;
  private static final int LAST_PAGE = 1_000_000;
  private static final int LONGEST = 200;

  public ListQuery {
    filters = Map.copyOf(filters);
    descending = descending && !sort.isEmpty();
    page = Math.min(LAST_PAGE, Math.max(1, page));
    size = Math.min(LARGEST_SIZE, Math.max(1, size));
  }

  /** Reads the query's parameters, of the filters only those named. */
  public static ListQuery of(Map<String, String> parameters, String... filters) {
    Map<String, String> set = new LinkedHashMap<>();
    for (String name : filters) {
      String value = text(parameters, name);
      if (!value.isEmpty()) {
        set.put(name, value);
      }
    }
    String sort = text(parameters, "sort");
    boolean descending = sort.startsWith("-");
    return new ListQuery(
        text(parameters, "q"),
        set,
        descending ? sort.substring(1) : sort,
        descending,
        whole(parameters, "page", 1),
        whole(parameters, "size", USUAL_SIZE));
  }

  public @Nullable String filter(String name) {
    return filters.get(name);
  }

  /** Whether anything keeps rows out of the list. */
  public boolean filtered() {
    return !text.isEmpty() || !filters.isEmpty();
  }

  public ListQuery withPage(int page) {
    return new ListQuery(text, filters, sort, descending, page, size);
  }

  /** Ordered by that column, the other way round if it already is; back to the first page. */
  public ListQuery sortedBy(String column) {
    boolean turned = column.equals(sort) && !descending;
    return new ListQuery(text, filters, column, turned, 1, size);
  }

  /** With one filter set, or taken away by an empty value; back to the first page. */
  public ListQuery with(String name, String value) {
    Map<String, String> changed = new LinkedHashMap<>(filters);
    if (value.isEmpty()) {
      changed.remove(name);
    } else {
      changed.put(name, value);
    }
    return new ListQuery(text, changed, sort, descending, 1, size);
  }

  /** Rows before this page. */
  public long offset() {
    return (page - 1L) * size;
  }

  public long pages(long total) {
    return Math.max(1, (total + size - 1) / size);
  }

  /** Number of the first row shown, from 1; 0 in an empty list. */
  public long first(long total) {
    return offset() < total ? offset() + 1 : 0;
  }

  /** Number of the last row shown. */
  public long last(long total) {
    return offset() < total ? Math.min(total, offset() + size) : 0;
  }

  /**
   * The ORDER BY list in SQL.
   *
   * @param columns from the key in the address to the expression in SQL: only these can be sorted
   *     by
   * @param usual the list's own order, also used within equal values; must make rows unique, or
   *     pages overlap
   */
  public String orderBy(Map<String, String> columns, String usual) {
    String column = columns.get(sort);
    return column == null
        ? usual
        : column + (descending ? " desc nulls last, " : " asc nulls last, ") + usual;
  }

  /** The sort parameter as it stands in the address: height, -height, or empty. */
  public String sortParameter() {
    return descending ? "-" + sort : sort;
  }

  /** For {@code aria-sort}; null for a column the list is not sorted by. */
  public @Nullable String order(String column) {
    if (!column.equals(sort)) {
      return null;
    }
    return descending ? "descending" : "ascending";
  }

  public String arrow(String column) {
    if (!column.equals(sort)) {
      return "";
    }
    return descending ? "\u00a0↓" : "\u00a0↑";
  }

  /** The query string without its question mark, encoded; what is as usual is left out. */
  @Override
  public String toString() {
    List<String> parts = new ArrayList<>();
    add(parts, "q", text);
    filters.keySet().stream().sorted().forEach(name -> add(parts, name, filters.get(name)));
    add(parts, "sort", sortParameter());
    add(parts, "page", page == 1 ? "" : String.valueOf(page));
    add(parts, "size", size == USUAL_SIZE ? "" : String.valueOf(size));
    return String.join("&", parts);
  }

  private static void add(List<String> parts, String name, @Nullable String value) {
    if (value != null && !value.isEmpty()) {
      parts.add(encoded(name) + "=" + encoded(value));
    }
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static String text(Map<String, String> parameters, String name) {
    String value = parameters.getOrDefault(name, "").strip();
    return value.substring(0, Math.min(LONGEST, value.length()));
  }

  private static int whole(Map<String, String> parameters, String name, int otherwise) {
    return Typed.count(parameters.getOrDefault(name, "")).orElse(otherwise);
  }
}
