package trialwood.gate.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import trialwood.evidence.Ask;
import trialwood.gate.Choice;
import trialwood.gate.Criterion;
import trialwood.gate.Finding;
import trialwood.gate.GatePolicy;
import trialwood.gate.Review;
import trialwood.gate.Verdict;
import trialwood.gate.Waiting.AtGate;
import trialwood.lineage.Accession;
import trialwood.web.IntervalPicture;
import trialwood.web.RecordsUsed;

/**
 * All candidates of one crop at one gate: clear cases first, doubtful ones by what is missing.
 *
 * @param columns the musts that records answer; those that ask the records the same share one
 * @param attested whether there are musts that a person attests
 * @param method how each column was computed, in one text
 */
record GateSheet(
    String crop,
    int policy,
    List<Column> columns,
    boolean attested,
    List<Row> rows,
    String method) {

  record Column(String label, String asked) {}

  /** Who stands at the gate. */
  record Waiting(Accession accession, AtGate standing, Review review) {}

  /**
   * One candidate.
   *
   * @param warnings the guards that spoke in any of its musts
   */
  record Row(
      String code,
      @Nullable String talkName,
      AtGate standing,
      Choice line,
      String because,
      List<String> warnings,
      List<Cell> cells,
      String attested) {}

  /**
   * What one column says of a candidate.
   *
   * @param counts behind the value; empty where it says it all
   */
  record Cell(Verdict verdict, String value, String counts, @Nullable IntervalPicture picture) {}

  static GateSheet of(String crop, GatePolicy policy, List<Waiting> waiting) {
    List<Finding> lead = waiting.get(0).review().findings();
    List<Column> columns = columns(lead).stream().map(GateSheet::head).toList();
    boolean attested = lead.stream().anyMatch(GateSheet::isAttested);
    List<Row> rows = new ArrayList<>();
    List<IntervalPicture.@Nullable Scale> scales = scales(waiting);
    for (Waiting one : waiting) {
      List<List<Finding>> columnsOf = columns(one.review().findings());
      List<Cell> cells = new ArrayList<>();
      for (int i = 0; i < columnsOf.size(); i++) {
        cells.add(cell(columnsOf.get(i), scales.get(i)));
      }
      rows.add(row(one, cells));
    }
    rows.sort(
        Comparator.comparing(GateSheet::doubt)
            .thenComparing(Row::because)
            .thenComparing(Row::code));
    return new GateSheet(crop, policy.number(), columns, attested, rows, method(waiting));
  }

  /** Where the records of each candidate are listed: its own page at this gate on that day. */
  public Map<String, String> pages(String gate, LocalDate asOf) {
    return RecordsUsed.of(
        rows, row -> "/gates/%s/%s?asOf=%s".formatted(gate, row.code(), asOf), Row::code);
  }

  private static String method(List<Waiting> waiting) {
    Map<String, String> methods = new LinkedHashMap<>();
    for (Waiting one : waiting) {
      for (Finding finding : one.review().findings()) {
        if (finding.criterion().isMust()
            && finding.criterion().ask() != null
            && finding.evidence().isRecorded()) {
          methods.putIfAbsent(finding.criterion().label(), finding.evidence().method());
        }
      }
    }
    return methods.entrySet().stream()
        .map(each -> each.getKey() + ": " + each.getValue())
        .collect(Collectors.joining(" "));
  }

  private static int doubt(Row row) {
    return switch (row.line) {
      case ADVANCE -> 0;
      case DISCARD -> 1;
      case HOLD -> 2;
    };
  }

  private static Row row(Waiting one, List<Cell> cells) {
    List<Finding> said = one.review().findings().stream().filter(GateSheet::isAttested).toList();
    long yes = said.stream().filter(finding -> finding.verdict() == Verdict.MEETS).count();
    return new Row(
        one.accession().code(),
        one.accession().talkName(),
        one.standing(),
        one.review().line(),
        one.review().because(),
        warnings(one.review()),
        cells,
        yes + " of " + said.size());
  }

  private static List<String> warnings(Review review) {
    return review.findings().stream()
        .filter(finding -> finding.criterion().isMust())
        .flatMap(finding -> finding.evidence().remarks().stream())
        .distinct()
        .toList();
  }

  private static boolean isAttested(Finding finding) {
    return finding.criterion().isMust() && finding.criterion().ask() == null;
  }

  private static List<List<Finding>> columns(List<Finding> findings) {
    Map<Ask, List<Finding>> columns = new LinkedHashMap<>();
    for (Finding finding : findings) {
      Ask ask = finding.criterion().ask();
      if (finding.criterion().isMust() && ask != null) {
        columns.computeIfAbsent(ask, it -> new ArrayList<>()).add(finding);
      }
    }
    return List.copyOf(columns.values());
  }

  private static Column head(List<Finding> same) {
    return new Column(
        same.get(0).criterion().label(), same.get(0).asked().replaceFirst(" from .*", ""));
  }

  private static List<IntervalPicture.@Nullable Scale> scales(List<Waiting> waiting) {
    List<IntervalPicture.@Nullable Scale> scales = new ArrayList<>();
    int columns = columns(waiting.get(0).review().findings()).size();
    for (int i = 0; i < columns; i++) {
      int column = i;
      scales.add(
          Pictures.scale(
              waiting.stream()
                  .flatMap(one -> columns(one.review().findings()).get(column).stream())
                  .toList()));
    }
    return scales;
  }

  private static Cell cell(List<Finding> same, IntervalPicture.@Nullable Scale scale) {
    Finding first = same.get(0);
    Verdict worst =
        same.stream()
            .map(Finding::verdict)
            .max(Comparator.comparing(GateSheet::gravity))
            .orElseThrow();
    Criterion withHope =
        same.stream()
            .map(Finding::criterion)
            .filter(criterion -> criterion.discard().line() != null)
            .findFirst()
            .orElse(first.criterion());
    IntervalPicture picture =
        scale == null ? null : Pictures.of(first, Objects.requireNonNull(withHope), scale);
    String[] valueAndCounts = first.found().split(" · ", 2);
    return new Cell(
        worst, valueAndCounts[0], valueAndCounts.length > 1 ? valueAndCounts[1] : "", picture);
  }

  private static int gravity(Verdict verdict) {
    return switch (verdict) {
      case MEETS -> 0;
      case NO_RECORD -> 1;
      case NOT_SETTLED -> 2;
      case FALLS_SHORT -> 3;
    };
  }
}
