package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.lineage.Accession;
import trialwood.propagation.Batch;
import trialwood.propagation.NewTray;
import trialwood.propagation.Sticking;
import trialwood.propagation.StickingRun;
import trialwood.web.Entry;
import trialwood.web.Form;
import trialwood.web.Typed;

/** One accession's cuttings in a run, in trays of equal filling, a block each. */
record BatchForm(
    @Nullable UUID formKey,
    @Nullable String accession,
    Batch.@Nullable Source source,
    @Nullable String on,
    @Nullable String trays,
    @Nullable String cells,
    @Nullable String stuck,
    @Nullable String by)
    implements Form {

  private static final int MOST_TRAYS = 60;

  static BatchForm fresh(LocalDate on) {
    return new BatchForm(
        UUID.randomUUID(), "", Batch.Source.ORTET, on.toString(), "3", "24", "", null);
  }

  /** Sticks the batch: tray labels are the run, the code and the block. */
  void stick(Sticking sticking, StickingRun run, Optional<Accession> named, LocalDate today) {
    Entry entry = new Entry();
    if (named.isEmpty()) {
      entry.wrong("accession", "There is no accession “%s”.".formatted(accession));
    }
    if (source == null) {
      entry.wrong("source", "Say what the cuttings were taken from.");
    }
    LocalDate day = entry.day("on", on, today);
    int number = entry.count("trays", trays);
    if (Typed.count(Objects.requireNonNullElse(trays, "")).isPresent()
        && (number < 1 || number > MOST_TRAYS)) {
      entry.wrong("trays", "A batch is stuck in 1 to 60 trays.");
    }
    int room = entry.count("cells", cells);
    int each = entry.count("stuck", stuck);
    UUID person = entry.person("by", by);
    entry.orRefuse();
    Accession plant = named.orElseThrow();
    String code = run.code() + "-" + plant.code();
    Batch batch =
        sticking.batch(
            new Batch(
                Objects.requireNonNull(run.id()),
                code,
                Objects.requireNonNull(source),
                null,
                null));
    for (int block = 1; block <= number; block++) {
      sticking.tray(
          run,
          batch,
          new NewTray(
              code + "-" + block,
              Objects.requireNonNull(plant.id()),
              room,
              day,
              each,
              String.valueOf(block),
              null,
              person));
    }
  }
}
