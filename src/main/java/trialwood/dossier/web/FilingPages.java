package trialwood.dossier.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.dossier.Filing;
import trialwood.dossier.FilingRoute;
import trialwood.dossier.FilingRoutes;
import trialwood.dossier.Filings;
import trialwood.lineage.Accession;
import trialwood.people.Persons;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.web.ForDossier;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Where filings are logged and put right. */
@Controller
@ForDossier
class FilingPages {

  private final DossierCandidates candidates;
  private final Filings filings;
  private final FilingRoutes routes;
  private final Persons persons;
  private final Recorder recorder;
  private final Forms forms;
  private final Clock clock;

  FilingPages(
      DossierCandidates candidates,
      Filings filings,
      FilingRoutes routes,
      Persons persons,
      Recorder recorder,
      Forms forms,
      Clock clock) {
    this.candidates = candidates;
    this.filings = filings;
    this.routes = routes;
    this.persons = persons;
    this.recorder = recorder;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/dossiers/{code}/filings/new")
  String blank(@PathVariable String code, Model model) {
    model.addAttribute("form", FilingForm.fresh());
    return page("dossier/new-filing", candidates.named(code), model);
  }

  @PostMapping("/dossiers/{code}/filings/new")
  String log(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable FilingForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidates.named(code);
    UUID id = DossierCandidates.id(candidate);
    if (!forms.store(
        form,
        said,
        () ->
            filings.save(Objects.requireNonNull(form).read(id, route(form), today(), recorder)))) {
      return page("dossier/new-filing", candidate, model);
    }
    return stored(candidate, "The filing is logged.", next);
  }

  @GetMapping("/dossiers/{code}/filings/{id}/correct")
  String filled(@PathVariable String code, @PathVariable UUID id, Model model) {
    Accession candidate = candidates.named(code);
    model.addAttribute("form", filled(logged(candidate, id)));
    return page("dossier/correct-filing", candidate, model);
  }

  @PostMapping("/dossiers/{code}/filings/{id}/correct")
  String correct(
      @PathVariable String code,
      @PathVariable UUID id,
      @Valid @ModelAttribute("form") @Nullable FilingForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidates.named(code);
    Filing earlier = logged(candidate, id);
    if (!forms.store(form, said, () -> replace(earlier, Objects.requireNonNull(form)))) {
      return page("dossier/correct-filing", candidate, model);
    }
    return stored(candidate, "The filing is corrected; what it said before is kept.", next);
  }

  private FilingForm filled(Filing filing) {
    String route = routes.findById(filing.routeId()).map(FilingRoute::code).orElseThrow();
    return FilingForm.of(filing, route);
  }

  private Optional<FilingRoute> route(FilingForm form) {
    return routes.findByCode(Objects.requireNonNullElse(form.route(), ""));
  }

  private void replace(Filing earlier, FilingForm form) {
    Check.that()
        .holds(
            !filings.existsBySupersedesId(Objects.requireNonNull(earlier.id())),
            "earlier",
            "Somebody has corrected this meanwhile. Open the dossier and look at what stands now.")
        .orRefuse();
    filings.save(form.correct(earlier, route(form), today(), recorder));
  }

  private Filing logged(Accession candidate, UUID id) {
    return filings
        .findById(id)
        .filter(it -> it.accessionId().equals(candidate.id()))
        .orElseThrow(NotFound.of("filing of " + candidate.code()));
  }

  private String page(String template, Accession candidate, Model model) {
    Map<String, String> choices = new LinkedHashMap<>();
    routes.findAllByOrderByCode().forEach(route -> choices.put(route.code(), route.name()));
    model.addAttribute("routes", choices);
    model.addAttribute("code", candidate.code());
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return template;
  }

  private static String stored(Accession candidate, String sentence, RedirectAttributes next) {
    next.addFlashAttribute("status", sentence);
    next.addAttribute("candidate", candidate.code());
    return "redirect:/dossiers/{candidate}";
  }

  private LocalDate today() {
    return LocalDate.now(clock);
  }
}
