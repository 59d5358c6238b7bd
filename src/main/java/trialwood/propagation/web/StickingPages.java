package trialwood.propagation.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
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
import trialwood.people.Persons;
import trialwood.propagation.Batch;
import trialwood.propagation.Sticking;
import trialwood.propagation.StickingRun;
import trialwood.propagation.StickingRuns;
import trialwood.web.ForBench;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Setting up runs, and sticking batch after batch into them. */
@Controller
class StickingPages {

  private final Sticking sticking;
  private final StickingRuns runs;
  private final Accessions accessions;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  StickingPages(
      Sticking sticking,
      StickingRuns runs,
      Accessions accessions,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.sticking = sticking;
    this.runs = runs;
    this.accessions = accessions;
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
            sticking.run(
                Objects.requireNonNull(form)
                    .read(
                        LocalDate.now(clock),
                        accessions.named(Objects.requireNonNullElse(form.check(), "")))))) {
      return "bench/new-run";
    }
    next.addFlashAttribute("status", "The run is set up. Stick its batches, the check first.");
    next.addAttribute("run", Objects.requireNonNull(Objects.requireNonNull(form).run()).strip());
    return "redirect:/bench/runs/{run}";
  }

  @GetMapping("/bench/runs/{code}/batches/new")
  @ForBench
  String newBatch(@PathVariable String code, Model model) {
    StickingRun run = run(code);
    LocalDate today = LocalDate.now(clock);
    model.addAttribute("form", BatchForm.fresh(today.isAfter(run.toDate()) ? run.toDate() : today));
    return batchPage(run, model);
  }

  @PostMapping("/bench/runs/{code}/batches/new")
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
                    sticking,
                    run,
                    accessions.named(Objects.requireNonNullElse(form.accession(), "")),
                    LocalDate.now(clock)))) {
      return batchPage(run, model);
    }
    next.addFlashAttribute("status", "The batch is stuck.");
    next.addAttribute("run", run.code());
    return "redirect:/bench/runs/{run}";
  }

  private StickingRun run(String code) {
    return runs.findByCode(code).orElseThrow(NotFound.of("run " + code));
  }

  private String batchPage(StickingRun run, Model model) {
    Map<String, String> sources = new LinkedHashMap<>();
    for (Batch.Source source : Batch.Source.values()) {
      sources.put(source.name(), source.word());
    }
    model.addAttribute("run", run);
    model.addAttribute("sources", sources);
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "bench/new-batch";
  }
}
