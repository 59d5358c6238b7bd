package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.analysis.Answer;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.propagation.BenchLists;
import trialwood.propagation.RootingTimes;
import trialwood.propagation.RunTable;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.RecordsUsed;

/** When the cuttings of one accession rooted in one run: the steps and a smooth law over them. */
@Controller
class RootingTimePage {

  private final StickingRuns runs;
  private final Accessions accessions;
  private final RunTable table;
  private final BenchLists bench;
  private final Clock clock;

  RootingTimePage(
      StickingRuns runs, Accessions accessions, RunTable table, BenchLists bench, Clock clock) {
    this.runs = runs;
    this.accessions = accessions;
    this.table = table;
    this.bench = bench;
    this.clock = clock;
  }

  @GetMapping("/bench/runs/{run}/days/{code}")
  @ForStaff
  String days(@PathVariable("run") String runCode, @PathVariable String code, Model page) {
    StickingRun run = runs.findByCode(runCode).orElseThrow(NotFound.of("run " + runCode));
    Accession accession = accessions.named(code).orElseThrow(NotFound.of("candidate"));
    RootingTimes times =
        table
            .times(run, Objects.requireNonNull(accession.id()), LocalDate.now(clock))
            .orElseThrow(NotFound.of("look at " + code + " in run " + runCode));
    Answer<RootingTimes.Smooth> smooth = times.smooth();
    RootingTimes.Smooth law = smooth.value().orElse(null);
    page.addAttribute("run", run);
    page.addAttribute("accession", accession);
    page.addAttribute("times", times);
    page.addAttribute("law", law);
    page.addAttribute("trays", times.trays().size());
    page.addAttribute(
        "records",
        RecordsUsed.of(
            bench.traysOf(runCode).stream()
                .filter(tray -> tray.accession().equals(accession.code()))
                .filter(tray -> tray.voidReason() == null)
                .toList(),
            tray -> "/bench/trays/" + tray.tray(),
            tray -> "tray " + tray.tray()));
    if (law != null) {
      page.addAttribute("half", law.halfByTrays().value().orElse(null));
      page.addAttribute("noHalf", law.halfByTrays().lack().orElse(null));
      page.addAttribute("never", law.neverByTrays().value().orElse(null));
      page.addAttribute("noNever", law.neverByTrays().lack().orElse(null));
    }
    page.addAttribute("lacking", smooth.lack().orElse(null));
    page.addAttribute("picture", RootingPicture.large(times, law == null ? null : law.fit()));
    return "bench/days";
  }
}
