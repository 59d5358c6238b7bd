package trialwood.correction;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.record.Refused;
import trialwood.unit.Doubts;
import trialwood.unit.Unit;
import trialwood.web.Measures;

/** Works out what follows when labels are put right. */
@Component
class Proposals {

  private final Periods periods;
  private final Descent descent;
  private final Records records;
  private final Doubts doubts;
  private final Accessions accessions;

  Proposals(
      Periods periods, Descent descent, Records records, Doubts doubts, Accessions accessions) {
    this.periods = periods;
    this.descent = descent;
    this.records = records;
    this.doubts = doubts;
    this.accessions = accessions;
  }

  /** An accession that units pass for. */
  private record Holder(UUID id, String code) {}

  /** A unit of the tree that grows out of the named ones. */
  private record Twig(UUID unitId, String label, String kind, boolean named) {}

  /**
   * @throws Refused when the named units are of several accessions in these days, or of the right
   *     one already
   */
  @Transactional(readOnly = true)
  Proposal of(Mistake mistake) {
    Holder these = holder("labels", mistake.these(), mistake);
    List<Proposal.Group> groups = new ArrayList<>();
    if (mistake.those().isEmpty()) {
      groups.add(group(mistake, mistake.these(), these, accession(mistake.accessionId())));
    } else {
      Holder those = holder("others", mistake.those(), mistake);
      groups.add(group(mistake, mistake.these(), these, those));
      groups.add(group(mistake, mistake.those(), those, these));
    }
    Map<UUID, String> offered = new LinkedHashMap<>();
    groups.forEach(
        group -> group.offered().forEach(line -> offered.put(line.unitId(), line.label())));
    List<UUID> named =
        Stream.concat(mistake.these().stream(), mistake.those().stream())
            .map(Proposals::id)
            .toList();
    return new Proposal(
        mistake,
        groups,
        records.on(offered.keySet(), mistake.from(), mistake.until()),
        asked(offered, mistake.from()),
        records.seenOn(named, mistake.from(), mistake.until()));
  }

  private Holder holder(String field, List<Unit> units, Mistake mistake) {
    Map<UUID, List<Period>> known = periods.of(units.stream().map(Proposals::id).toList());
    Holder holder = null;
    for (Unit unit : units) {
      List<Holder> in =
          inTheseDays(known.get(id(unit)), mistake).stream()
              .map(it -> new Holder(it.accessionId(), it.code()))
              .distinct()
              .toList();
      if (in.size() != 1) {
        throw new Refused(
            field,
            in.isEmpty()
                ? "Nobody said whose %s was in these days.".formatted(unit.label())
                : "%s changed hands within these days. Put the days before and after right one by one."
                    .formatted(unit.label()));
      }
      if (holder != null && !holder.equals(in.get(0))) {
        throw new Refused(
            field,
            "%s is %s, but %s is %s. Take one accession at a time."
                .formatted(units.get(0).label(), holder.code(), unit.label(), in.get(0).code()));
      }
      holder = in.get(0);
    }
    return Objects.requireNonNull(holder);
  }

  private Proposal.Group group(Mistake mistake, List<Unit> named, Holder was, Holder will) {
    if (was.equals(will)) {
      throw new Refused(
          mistake.those().isEmpty() ? "accession" : "others",
          "%s is %s already.".formatted(named.get(0).label(), will.code()));
    }
    List<Proposal.Line> lines = new ArrayList<>();
    Collection<UUID> known = new ArrayList<>();
    List<Twig> twigs =
        named.stream()
            .map(unit -> new Twig(id(unit), unit.label(), word(unit.kind().name()), true))
            .toList();
    while (!twigs.isEmpty()) {
      Map<UUID, List<Period>> held = periods.of(twigs.stream().map(Twig::unitId).toList());
      List<UUID> grown = new ArrayList<>();
      for (Twig twig : twigs) {
        known.add(twig.unitId());
        Proposal.Line line =
            line(mistake, twig, held.getOrDefault(twig.unitId(), List.of()), was, will);
        lines.add(line);
        if (line.remark().isEmpty()) {
          grown.add(twig.unitId());
        }
      }
      twigs =
          descent.of(grown, mistake.from(), mistake.until()).stream()
              .filter(child -> !known.contains(child.unitId()))
              .map(child -> new Twig(child.unitId(), child.label(), word(child.kind()), false))
              .distinct()
              .toList();
    }
    return new Proposal.Group(was.code(), will.code(), will.id(), lines);
  }

  private static Proposal.Line line(
      Mistake mistake, Twig twig, List<Period> held, Holder was, Holder will) {
    List<String> codes = inTheseDays(held, mistake).stream().map(Period::code).distinct().toList();
    String remark =
        codes.equals(List.of(was.code()))
            ? ""
            : codes.equals(List.of(will.code()))
                ? "is %s already".formatted(will.code())
                : codes.isEmpty()
                    ? "was nobody's in these days"
                    : "is " + String.join(" and ", codes);
    Period word =
        new Period(twig.unitId(), mistake.from(), mistake.until(), will.id(), will.code());
    return new Proposal.Line(
        twig.unitId(),
        twig.label(),
        twig.kind(),
        twig.named(),
        Period.words(held),
        Period.words(Period.with(word, held)),
        remark);
  }

  private List<Proposal.Asked> asked(Map<UUID, String> labels, LocalDate from) {
    return doubts.findByUnitIdInOrderByOnDate(labels.keySet()).stream()
        .filter(doubt -> doubt.answer() == null && !doubt.onDate().isBefore(from))
        .map(
            doubt ->
                new Proposal.Asked(
                    Objects.requireNonNull(doubt.id()),
                    Objects.requireNonNull(labels.get(doubt.unitId())),
                    Measures.day(doubt.onDate()),
                    doubt.question()))
        .toList();
  }

  private Holder accession(@Nullable UUID id) {
    Accession accession = accessions.findById(Objects.requireNonNull(id)).orElseThrow();
    return new Holder(id, accession.code());
  }

  private static List<Period> inTheseDays(@Nullable List<Period> held, Mistake mistake) {
    return held == null
        ? List.of()
        : held.stream().filter(it -> it.touches(mistake.from(), mistake.until())).toList();
  }

  private static String word(String kind) {
    return kind.toLowerCase(Locale.ROOT);
  }

  private static UUID id(Unit unit) {
    return Objects.requireNonNull(unit.id());
  }
}
