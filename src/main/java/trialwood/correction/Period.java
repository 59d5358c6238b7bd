package trialwood.correction;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import trialwood.web.Measures;

/**
 * Whose a unit is in some days, as its sayings are settled.
 *
 * @param until the first day on which it no longer is; {@link #OPEN} when none is known
 * @param code of the accession
 */
record Period(UUID unitId, LocalDate from, LocalDate until, UUID accessionId, String code) {

  /** Stands for "no end known". */
  static final LocalDate OPEN = LocalDate.of(9999, 12, 31);

  boolean touches(LocalDate first, LocalDate end) {
    return from.isBefore(end) && until.isAfter(first);
  }

  private Period between(LocalDate first, LocalDate end) {
    return new Period(unitId, first, end, accessionId, code);
  }

  /** The periods of a unit after a later word for some of their days. */
  static List<Period> with(Period later, List<Period> before) {
    List<Period> after = new ArrayList<>(List.of(later));
    for (Period it : before) {
      if (it.from().isBefore(later.from())) {
        after.add(it.between(it.from(), earlier(it.until(), later.from())));
      }
      if (it.until().isAfter(later.until())) {
        after.add(it.between(later(it.from(), later.until()), it.until()));
      }
    }
    after.sort(Comparator.comparing(Period::from));
    return after;
  }

  /** As words: C18-03 until 5 Jul 2022, then C18-04. */
  static String words(List<Period> periods) {
    List<Period> joined = joined(periods);
    if (joined.size() == 1) {
      return joined.get(0).alone();
    }
    return joined.stream()
        .map(
            it ->
                it.until().equals(OPEN)
                    ? it.code()
                    : "%s until %s".formatted(it.code(), Measures.day(it.until())))
        .collect(Collectors.joining(", then "));
  }

  private String alone() {
    return until.equals(OPEN)
        ? "%s since %s".formatted(code, Measures.day(from))
        : "%s from %s until %s".formatted(code, Measures.day(from), Measures.day(until));
  }

  /** Two periods in a row of one accession read as one. */
  private static List<Period> joined(List<Period> periods) {
    List<Period> joined = new ArrayList<>();
    for (Period it : periods) {
      Period last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
      if (last != null
          && last.until().equals(it.from())
          && last.accessionId().equals(it.accessionId())) {
        joined.set(joined.size() - 1, last.between(last.from(), it.until()));
      } else {
        joined.add(it);
      }
    }
    return joined;
  }

  private static LocalDate earlier(LocalDate one, LocalDate other) {
    return one.isBefore(other) ? one : other;
  }

  private static LocalDate later(LocalDate one, LocalDate other) {
    return one.isAfter(other) ? one : other;
  }
}
