package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.lineage.Accessions;
import trialwood.propagation.BenchPlanning;
import trialwood.propagation.BenchPlans;
import trialwood.propagation.PlanLists;
import trialwood.propagation.SessionBatch;
import trialwood.propagation.SessionLists;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;
import trialwood.site.Benches;
import trialwood.web.ForBench;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The bench plan of a run: drawn by lot, read as a map, printed for sticking day. */
@Controller
class BenchPlanPages {

  private final BenchPlanning planning;
  private final BenchPlans plans;
  private final PlanLists planned;
  private final SessionLists lists;
  private final StickingRuns runs;
  private final Accessions accessions;
  private final Benches benches;
  private final Forms forms;
  private final Clock clock;

  BenchPlanPages(
      BenchPlanning planning,
      BenchPlans plans,
      PlanLists planned,
      SessionLists lists,
      StickingRuns runs,
      Accessions accessions,
      Benches benches,
      Forms forms,
      Clock clock) {
    this.planning = planning;
    this.plans = plans;
    this.planned = planned;
    this.lists = lists;
    this.runs = runs;
    this.accessions = accessions;
    this.benches = benches;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/bench/runs/{code}/plan")
  @ForStaff
  String plan(@PathVariable String code, Model model) {
    StickingRun run = run(code);
    UUID id = Objects.requireNonNull(run.id());
    Map<Integer, List<PlanLists.Spot>> blocks = planned.blocks(id);
    boolean isSet =
        blocks.values().stream().flatMap(List::stream).anyMatch(spot -> spot.tray() != null);
    model.addAttribute("run", run);
    model.addAttribute("today", LocalDate.now(clock));
    model.addAttribute("blocks", blocks);
    model.addAttribute("rows", blocks.values().stream().mapToInt(List::size).max().orElse(0));
    model.addAttribute("drawn", plans.findById(id).orElse(null));
    model.addAttribute("open", !isSet);
    return "bench/plan";
  }

  @GetMapping("/bench/runs/{code}/plan/draw")
  @ForBench
  String draw(@PathVariable String code, Model model) {
    StickingRun run = run(code);
    model.addAttribute("form", PlanForm.fresh(entries(run)));
    return drawPage(run, model);
  }

  @PostMapping("/bench/runs/{code}/plan/draw")
  @ForBench
  String draw(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable PlanForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    StickingRun run = run(code);
    if (!forms.store(
        form,
        said,
        () -> planning.draw(run, Objects.requireNonNull(form).read(accessions, benches), null))) {
      return drawPage(run, model);
    }
    next.addFlashAttribute("status", "The plan is drawn. Print it for the bench.");
    return "redirect:/bench/runs/{code}/plan";
  }

  /** The entries of the plan as it stands, or what has been stuck, the check first. */
  private List<String> entries(StickingRun run) {
    List<PlanLists.Spot> first =
        planned.blocks(Objects.requireNonNull(run.id())).getOrDefault(1, List.of());
    Stream<String> others =
        first.isEmpty()
            ? lists.batches(run).stream().filter(it -> !it.isCheck()).map(SessionBatch::accession)
            : first.stream().filter(it -> !it.isCheck()).map(PlanLists.Spot::accession).sorted();
    return Stream.concat(Stream.of(check(run)), others).toList();
  }

  private String check(StickingRun run) {
    return accessions.findById(run.checkAccessionId()).orElseThrow().code();
  }

  private String drawPage(StickingRun run, Model model) {
    model.addAttribute("run", run);
    model.addAttribute("benches", benches.findAllByOrderByCode());
    return "bench/draw-plan";
  }

  private StickingRun run(String code) {
    return runs.findByCode(code).orElseThrow(NotFound.of("run " + code));
  }
}
