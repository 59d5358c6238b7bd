package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.propagation.Batch;
import trialwood.propagation.NewBatch;
import trialwood.propagation.SessionBatch;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingSession;
import trialwood.propagation.Treatment;
import trialwood.unit.Unit;
import trialwood.web.Entry;
import trialwood.web.Form;
import trialwood.web.Questions;

/**
 * One accession's cuttings, tray by tray.
 *
 * @param plant label of the very plant they were taken from, if it is known
 * @param rows a tray each, the first for block 1; those left empty at the end are no trays
 */
record BatchForm(
    @Nullable UUID formKey,
    @Nullable String accession,
    Batch.@Nullable Source source,
    @Nullable String plant,
    @Nullable String on,
    @Nullable String cells,
    @Nullable List<Tray> rows,
    @Nullable String wounding,
    @Nullable String hormone,
    @Nullable String form,
    @Nullable String ppm,
    @Nullable String solutionMadeOn,
    @Nullable String note,
    @Nullable String by,
    @Nullable String asked,
    @Nullable String checked)
    implements Form {

  private static final int MOST_TRAYS = 60;

  /** What was stuck in one tray. */
  record Tray(@Nullable String stuck) {}

  /**
   * An empty form. Source and cells are those of the batch before, counts never are.
   *
   * @param accession whose cuttings, where that was tapped on the page before
   * @param trays how many boxes it opens with
   */
  static BatchForm after(
      Optional<SessionBatch> before,
      String accession,
      int trays,
      LocalDate on,
      @Nullable String by) {
    return new BatchForm(
        UUID.randomUUID(),
        accession,
        before.map(SessionBatch::source).orElse(Batch.Source.ORTET),
        null,
        on.toString(),
        before.map(SessionBatch::cells).map(String::valueOf).orElse("24"),
        boxes(List.of(), trays),
        null,
        null,
        null,
        null,
        null,
        null,
        by,
        null,
        null);
  }

  /** The same with one more tray. */
  BatchForm withOneMoreTray() {
    List<Tray> typed = Objects.requireNonNullElse(rows, List.<Tray>of());
    return new BatchForm(
        formKey,
        accession,
        source,
        plant,
        on,
        cells,
        boxes(typed, Math.min(typed.size() + 1, MOST_TRAYS)),
        wounding,
        hormone,
        form,
        ppm,
        solutionMadeOn,
        note,
        by,
        asked,
        checked);
  }

  private static List<Tray> boxes(List<Tray> typed, int number) {
    return Stream.concat(typed.stream(), Stream.generate(() -> new Tray(null)))
        .limit(number)
        .toList();
  }

  /**
   * @param named the accession behind the code, if there is one
   * @param unit the unit behind the plant's label, if there is one
   */
  void stick(
      StickingSession session,
      StickingRun run,
      Optional<Accession> named,
      Optional<Unit> unit,
      LocalDate today) {
    NewBatch batch = read(named, unit, today);
    Questions questions = new Questions(asked, checked);
    questions.ask(session.unusual(run, batch));
    session.stick(run, batch, questions.orAsk());
  }

  private NewBatch read(Optional<Accession> named, Optional<Unit> unit, LocalDate today) {
    Entry entry = new Entry();
    if (named.isEmpty()) {
      entry.wrong(
          "accession",
          accession == null || accession.isBlank()
              ? "Say whose cuttings they are, by the code."
              : "There is no accession “%s”.".formatted(accession.strip()));
    }
    if (source == null) {
      entry.wrong("source", "Say what the cuttings were taken from.");
    }
    String label = Entry.wordsIfAny(plant);
    if (label != null && unit.isEmpty()) {
      entry.wrong("plant", "There is no plant “%s”. Leave it empty if not known.".formatted(label));
    }
    LocalDate day = entry.day("on", on, today);
    int room = entry.count("cells", cells);
    List<Integer> stuck = stuck(entry);
    Treatment treatment = treatment(entry, today);
    UUID person = entry.person("by", by);
    entry.orRefuse();
    return new NewBatch(
        named.orElseThrow(),
        Objects.requireNonNull(source),
        unit.orElse(null),
        day,
        room,
        stuck,
        treatment,
        Entry.wordsIfAny(note),
        person);
  }

  private List<Integer> stuck(Entry entry) {
    List<Tray> typed = new ArrayList<>(Objects.requireNonNullElse(rows, List.of()));
    while (!typed.isEmpty() && isEmpty(typed.get(typed.size() - 1))) {
      typed.remove(typed.size() - 1);
    }
    if (typed.size() > MOST_TRAYS) {
      entry.wrong("rows", "A batch is stuck in 1 to 60 trays.");
    }
    List<Integer> stuck = new ArrayList<>();
    for (int nth = 0; nth < typed.size(); nth++) {
      stuck.add(entry.count("rows[%d].stuck".formatted(nth), typed.get(nth).stuck()));
    }
    if (typed.isEmpty()) {
      entry.wrong("rows[0].stuck", "Type how many were stuck in the first tray.");
    }
    return stuck;
  }

  private static boolean isEmpty(@Nullable Tray tray) {
    return tray == null || tray.stuck() == null || tray.stuck().isBlank();
  }

  private @Nullable Treatment treatment(Entry entry, LocalDate today) {
    Treatment own =
        new Treatment(
            Entry.wordsIfAny(wounding),
            Entry.wordsIfAny(hormone),
            Entry.wordsIfAny(form),
            Ppm.read(entry, ppm),
            entry.dayIfAny("solutionMadeOn", solutionMadeOn, today));
    return own.equals(Treatment.NONE) ? null : own;
  }
}
