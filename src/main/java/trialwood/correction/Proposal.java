package trialwood.correction;

import java.util.List;
import java.util.UUID;
import java.util.stream.Collectors;
import trialwood.unit.NewHolder;

/**
 * What a correction would say, for a person to look at before it is said.
 *
 * @param records what hangs on all these units in these days and goes with them
 * @param asked open questions about them since then
 * @param seen what was written in words about those that were named, in these days
 */
record Proposal(
    Mistake mistake,
    List<Group> groups,
    List<Records.Hanging> records,
    List<Asked> asked,
    List<Records.Seen> seen) {

  /**
   * Units that passed for one accession and are of another.
   *
   * @param was code of the one
   * @param will code of the other
   */
  record Group(String was, String will, UUID willId, List<Line> lines) {

    public List<Line> named() {
      return lines.stream().filter(Line::named).toList();
    }

    /** What came out of the named ones and can be put right with them. */
    public List<Line> offered() {
      return lines.stream().filter(line -> line.remark().isEmpty()).toList();
    }

    /** What came out of the named ones and is left alone. */
    public List<Line> left() {
      return lines.stream().filter(line -> !line.remark().isEmpty()).toList();
    }

    public String names() {
      return named().stream().map(Line::label).collect(Collectors.joining(", "));
    }
  }

  /**
   * One unit.
   *
   * @param before whose it is by now, in words
   * @param after whose it would be
   * @param remark why it is left alone; empty where it is offered
   */
  record Line(
      UUID unitId,
      String label,
      String kind,
      boolean named,
      String before,
      String after,
      String remark) {}

  /** An open question. */
  record Asked(UUID id, String label, String day, String question) {}

  /** The form with everything ticked that is offered and asked. */
  CorrectionForm ticked(CorrectionForm form) {
    return form.opened(
        groups.stream().flatMap(group -> group.offered().stream()).map(Line::unitId).toList(),
        asked.stream().map(Asked::id).toList());
  }

  /** What is to be said of the ticked ones. */
  List<NewHolder> holders(CorrectionForm form) {
    return groups.stream()
        .flatMap(
            group ->
                group.offered().stream()
                    .filter(line -> form.ticks(line.unitId()))
                    .map(line -> new NewHolder(line.unitId(), group.willId())))
        .toList();
  }
}
