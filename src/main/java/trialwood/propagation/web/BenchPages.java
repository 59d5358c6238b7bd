package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.propagation.BenchLists;
import trialwood.propagation.RoundTray;
import trialwood.propagation.Rounds;
import trialwood.propagation.RunTable;
import trialwood.propagation.RunTreatments;
import trialwood.propagation.SessionLists;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;
import trialwood.propagation.TrayLikeness;
import trialwood.propagation.TrayLine;
import trialwood.propagation.UndoneBatches;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.Place;
import trialwood.web.RecordsUsed;

/** The bench: what is due, the runs, and one run with its candidates beside the check. */
@Controller
class BenchPages {

  private final BenchLists bench;
  private final StickingRuns runs;
  private final RunTable table;
  private final RunTreatments treatments;
  private final TrayLikeness likeness;
  private final SessionLists session;
  private final UndoneBatches undone;
  private final Rounds rounds;
  private final Accessions accessions;
  private final Clock clock;

  BenchPages(
      BenchLists bench,
      StickingRuns runs,
      RunTable table,
      RunTreatments treatments,
      TrayLikeness likeness,
      SessionLists session,
      UndoneBatches undone,
      Rounds rounds,
      Accessions accessions,
      Clock clock) {
    this.bench = bench;
    this.runs = runs;
    this.table = table;
    this.treatments = treatments;
    this.likeness = likeness;
    this.session = session;
    this.undone = undone;
    this.rounds = rounds;
    this.accessions = accessions;
    this.clock = clock;
  }

  @GetMapping("/bench")
  @ForStaff
  @Place(key = "bench", label = "Bench", order = 30)
  String bench(Model model) {
    LocalDate today = LocalDate.now(clock);
    model.addAttribute("round", rounds.on(today));
    model.addAttribute("states", RoundTray.State.values());
    model.addAttribute("today", today);
    model.addAttribute("runs", bench.runs());
    return "bench/bench";
  }

  @GetMapping("/bench/runs/{code}")
  @ForStaff
  String run(@PathVariable String code, Model model) {
    StickingRun run = runs.findByCode(code).orElseThrow(NotFound.of("run " + code));
    LocalDate today = LocalDate.now(clock);
    var trays = bench.traysOf(code);
    Set<UUID> ids = trays.stream().map(TrayLine::accessionId).collect(Collectors.toSet());
    model.addAttribute("run", run);
    Accession check = accessions.findById(run.checkAccessionId()).orElseThrow();
    model.addAttribute("check", check);
    model.addAttribute("missing", session.missing(run, check.code()));
    model.addAttribute("asked", session.asked(run));
    model.addAttribute("undone", undone.findByRunIdOrderById(Objects.requireNonNull(run.id())));
    model.addAttribute("trays", trays);
    List<RunTable.Row> rows = table.of(run, ids, today);
    model.addAttribute("rows", rows);
    model.addAttribute("treatments", treatments.of(run, today));
    model.addAttribute("likeness", likeness.sentence(today));
    model.addAttribute("pictures", pictures(rows));
    model.addAttribute("line", bench.run(code).orElseThrow());
    model.addAttribute(
        "traysUsed",
        RecordsUsed.of(
            trays.stream().filter(TrayLine::isCounted).toList(),
            tray -> "/bench/trays/" + tray.tray(),
            tray -> "tray " + tray.tray()));
    return "bench/run";
  }

  private static Map<String, RootingPicture> pictures(List<RunTable.Row> rows) {
    Map<String, RootingPicture> pictures = new HashMap<>();
    for (RunTable.Row row : rows) {
      if (row.times() != null) {
        pictures.put(row.code(), RootingPicture.small(row.times()));
      }
    }
    return pictures;
  }
}
