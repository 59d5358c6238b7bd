package trialwood.label;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.unit.UnitKind;
import trialwood.web.Measures;

/**
 * Something that bears a label, with what is known of it today.
 *
 * @param code its short code
 * @param accession whose plants it holds now; absent where nobody says
 * @param onDate stuck, potted, numbered or planted
 * @param bench where the tray stands, or the yard of a lot
 */
public record Bearer(
    String code,
    UnitKind kind,
    String label,
    @Nullable String accession,
    @Nullable String run,
    @Nullable String batch,
    @Nullable LocalDate onDate,
    @Nullable String bench,
    @Nullable String block,
    @Nullable String place,
    @Nullable String containerClass,
    @Nullable String lot,
    @Nullable Integer number,
    @Nullable String trial,
    @Nullable String site) {

  /** What is printed, the most important first. The accession's code never stands alone. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(label);
    lines.add(accession == null ? "no accession said" : accession);
    switch (kind) {
      case TRAY -> {
        lines.add(joined(worded("run", run), worded("batch", batch)));
        lines.add(worded("stuck", day()));
        lines.add(joined(bench, joinedPlace("place")));
      }
      case LOT -> {
        lines.add(joined(containerClass, worded("potted", day())));
        lines.add(joined(bench));
      }
      case PLANT -> {
        lines.add(joined(worded("no.", number), worded("lot", lot)));
        lines.add(worded("there since", day()));
      }
      case PLOT -> {
        lines.add(joined(worded("trial", trial), site));
        lines.add(joined(worded("planted", day()), joinedPlace(null)));
        lines.add("For testing only. Not to be propagated.");
      }
      case POSITION, STOCK -> lines.add(joined(site));
    }
    return lines.stream().filter(line -> !line.isEmpty()).toList();
  }

  private @Nullable String day() {
    return onDate == null ? null : Measures.day(onDate);
  }

  private String joinedPlace(@Nullable String word) {
    return Stream.of(
            worded("block", block),
            word == null ? Objects.requireNonNullElse(place, "") : worded(word, place))
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining(", "));
  }

  /** Held together: a line is broken between such parts. */
  private static String worded(String word, @Nullable Object value) {
    return value == null ? "" : word + '\u00a0' + value;
  }

  private static String joined(@Nullable String... parts) {
    return Stream.of(parts)
        .filter(part -> part != null && !part.isEmpty())
        .collect(Collectors.joining(" · "));
  }
}
