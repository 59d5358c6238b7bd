package trialwood.exchange.sheet;

import java.time.LocalDate;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import trialwood.exchange.Column;
import trialwood.exchange.Known;
import trialwood.exchange.Row;
import trialwood.exchange.Rows;
import trialwood.exchange.Sheet;
import trialwood.propagation.Batch;
import trialwood.propagation.Batches;
import trialwood.propagation.NewTray;
import trialwood.propagation.Sticking;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;

/** The trays; each stands for its accession from the day it was stuck. */
@Component
class TraySheet extends Sheet {

  private static final Column<String> TRAY = Column.text("tray", 60, "its label").key();
  private static final Column<String> BATCH =
      Column.code("batch", Known.BATCH, "its batch").required();
  private static final Column<String> ACCESSION =
      Column.code("accession", Known.ACCESSION, "whose cuttings").required();
  private static final Column<Integer> CELLS =
      Column.count("cells", "cells of the tray").required();
  private static final Column<LocalDate> STUCK_ON =
      Column.past("stuck_on", "the day it was stuck").required();
  private static final Column<Integer> STUCK = Column.count("stuck", "cuttings stuck").required();
  private static final Column<String> BLOCK = Column.text("block", 10, "block on the bench");
  private static final Column<String> PLACE = Column.text("place", 10, "place in the block");
  private static final Column<String> BY = Column.by();

  private final Sticking sticking;
  private final Batches batches;
  private final StickingRuns runs;

  TraySheet(Sticking sticking, Batches batches, StickingRuns runs) {
    super(32, "trays", TRAY, BATCH, ACCESSION, CELLS, STUCK_ON, STUCK, BLOCK, PLACE, BY);
    this.sticking = sticking;
    this.batches = batches;
    this.runs = runs;
  }

  @Override
  protected void apply(Rows rows) {
    Map<@Nullable UUID, Batch> byId =
        batches.findAll().stream().collect(Collectors.toMap(Batch::id, Function.identity()));
    Map<@Nullable UUID, StickingRun> runsById =
        runs.findAll().stream().collect(Collectors.toMap(StickingRun::id, Function.identity()));
    rows.each(
        row -> {
          Batch batch = Objects.requireNonNull(byId.get(row.id(BATCH)));
          StickingRun run = Objects.requireNonNull(runsById.get(batch.runId()));
          sticking.tray(run, batch, tray(row));
        });
  }

  private static NewTray tray(Row row) {
    return new NewTray(
        row.the(TRAY),
        row.id(ACCESSION),
        row.the(CELLS),
        row.the(STUCK_ON),
        row.the(STUCK),
        row.maybe(BLOCK),
        row.maybe(PLACE),
        row.id(BY));
  }

  /** The accession as it was said on sticking day; later corrections are ties of their own. */
  @Override
  protected String query() {
    return """
        select u.label, b.code, a.code, t.cells, t.stuck_on, t.stuck, t.block, t.place, w.initials
        from tray t
          join unit u on u.id = t.unit_id
          join batch b on b.id = t.batch_id
          join tie f on f.id = (select min(s.id) from tie s where s.unit_id = t.unit_id)
          join accession a on a.id = f.accession_id
          left join person w on w.id = t.person_id
        order by t.unit_id
        """;
  }
}
