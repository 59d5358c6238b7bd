package trialwood.propagation.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.propagation.Batch;
import trialwood.propagation.BenchBlocks;
import trialwood.propagation.PlanLists;
import trialwood.propagation.SessionBatch;
import trialwood.propagation.SessionLists;
import trialwood.propagation.Sticking;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;
import trialwood.propagation.StickingSession;
import trialwood.propagation.TakingBack;
import trialwood.record.Refused;
import trialwood.unit.Units;
import trialwood.web.ForBench;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Setting up runs, and sticking batch after batch into them on one page. */
@Controller
class StickingPages {

  private static final int USUAL_TRAYS = 3;
  private static final String SESSION = "redirect:/bench/runs/{code}/batches/new";

  private final Sticking sticking;
  private final StickingSession session;
  private final TakingBack takingBack;
  private final SessionLists lists;
  private final PlanLists plans;
  private final BenchBlocks blocks;
  private final StickingRuns runs;
  private final Accessions accessions;
  private final Units units;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  StickingPages(
      Sticking sticking,
      StickingSession session,
      TakingBack takingBack,
      SessionLists lists,
      PlanLists plans,
      BenchBlocks blocks,
      StickingRuns runs,
      Accessions accessions,
      Units units,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.sticking = sticking;
    this.session = session;
    this.takingBack = takingBack;
    this.lists = lists;
    this.plans = plans;
    this.blocks = blocks;
    this.runs = runs;
    this.accessions = accessions;
    this.units = units;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/bench/runs/new")
  @ForBench
  String newRun(Model model) {
    model.addAttribute("form", RunForm.fresh(LocalDate.now(clock)));
    return "bench/new-run";
  }

  @PostMapping("/bench/runs/new")
  @ForBench
  String newRun(
      @Valid @ModelAttribute("form") @Nullable RunForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(
        form,
        said,
        () ->
            Objects.requireNonNull(form)
                .setUp(
                    sticking,
                    LocalDate.now(clock),
                    accessions.named(Objects.requireNonNullElse(form.check(), ""))))) {
      return "bench/new-run";
    }
    next.addFlashAttribute("status", "The run is set up. Draw its bench plan, then stick.");
    next.addAttribute("run", Objects.requireNonNull(Objects.requireNonNull(form).run()).strip());
    return "redirect:/bench/runs/{run}/plan";
  }

  @GetMapping("/bench/runs/{code}/batches/new")
  @ForBench
  String newBatch(
      @PathVariable String code, @RequestParam(defaultValue = "") String accession, Model model) {
    StickingRun run = run(code);
    List<SessionBatch> stuck = lists.batches(run);
    Optional<SessionBatch> last = stuck.stream().skip(Math.max(0, stuck.size() - 1)).findFirst();
    int planned = blocks.findByRunId(Objects.requireNonNull(run.id())).size();
    int trays = planned > 0 ? planned : last.map(SessionBatch::trays).orElse(USUAL_TRAYS);
    LocalDate today = LocalDate.now(clock);
    LocalDate on = today.isAfter(run.toDate()) ? run.toDate() : today;
    model.addAttribute(
        "form",
        BatchForm.after(last, accession, trays, on, (String) model.getAttribute("stuckBy")));
    return page(run, stuck, model);
  }

  @PostMapping(path = "/bench/runs/{code}/batches/new", params = "more")
  @ForBench
  String oneMoreTray(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable BatchForm form,
      BindingResult said,
      Model model) {
    StickingRun run = run(code);
    if (form != null) {
      model.addAttribute("form", form.withOneMoreTray());
    }
    return page(run, lists.batches(run), model);
  }

  @PostMapping(path = "/bench/runs/{code}/batches/new", params = "!more")
  @ForBench
  String newBatch(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable BatchForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    StickingRun run = run(code);
    if (!forms.store(
        form,
        said,
        () ->
            Objects.requireNonNull(form)
                .stick(
                    session,
                    run,
                    accessions.named(Objects.requireNonNullElse(form.accession(), "")),
                    units.labelled(Objects.requireNonNullElse(form.plant(), "")),
                    LocalDate.now(clock)))) {
      return page(run, lists.batches(run), model);
    }
    next.addFlashAttribute("status", "The batch is stuck. The next one can be typed below.");
    next.addFlashAttribute("stuckBy", Objects.requireNonNull(form).by());
    return SESSION;
  }

  @PostMapping("/bench/runs/{code}/batches/{batch}/undo")
  @ForBench
  String undo(@PathVariable String code, @PathVariable String batch, RedirectAttributes next) {
    StickingRun run = run(code);
    try {
      SessionBatch gone = takingBack.undo(run, batch);
      next.addFlashAttribute(
          "status", "%s is taken back with its %d cuttings.".formatted(gone.code(), gone.stuck()));
    } catch (Refused refused) {
      next.addFlashAttribute("status", refused.getMessage());
    }
    return SESSION;
  }

  private StickingRun run(String code) {
    return runs.findByCode(code).orElseThrow(NotFound.of("run " + code));
  }

  private String page(StickingRun run, List<SessionBatch> stuck, Model model) {
    Map<String, String> sources = new LinkedHashMap<>();
    for (Batch.Source source : Batch.Source.values()) {
      sources.put(source.name(), source.word());
    }
    String check = accessions.findById(run.checkAccessionId()).orElseThrow().code();
    model.addAttribute("run", run);
    model.addAttribute("batches", stuck);
    model.addAttribute("missing", lists.missing(run, check));
    model.addAttribute("unstuck", plans.unstuck(Objects.requireNonNull(run.id())));
    model.addAttribute("sources", sources);
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "bench/new-batch";
  }
}
