package trialwood.dossier.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
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
import trialwood.candidate.Candidates;
import trialwood.dossier.Disclosure;
import trialwood.dossier.Disclosures;
import trialwood.dossier.Dossiers;
import trialwood.dossier.FilingRoutes;
import trialwood.dossier.Filings;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.record.Recorder;
import trialwood.web.ForDossier;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** Dossiers, and what is logged in them. */
@Controller
class DossierPages {

  private final DossierList list;
  private final Dossiers dossiers;
  private final Accessions accessions;
  private final Candidates candidates;
  private final Disclosures disclosures;
  private final Filings filings;
  private final FilingRoutes routes;
  private final Persons persons;
  private final Recorder recorder;
  private final Forms forms;
  private final Clock clock;

  DossierPages(
      DossierList list,
      Dossiers dossiers,
      Accessions accessions,
      Candidates candidates,
      Disclosures disclosures,
      Filings filings,
      FilingRoutes routes,
      Persons persons,
      Recorder recorder,
      Forms forms,
      Clock clock) {
    this.list = list;
    this.dossiers = dossiers;
    this.accessions = accessions;
    this.candidates = candidates;
    this.disclosures = disclosures;
    this.filings = filings;
    this.routes = routes;
    this.persons = persons;
    this.recorder = recorder;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/dossiers")
  @ForStaff
  @Place(key = "dossiers", label = "Dossiers", order = 80)
  String list(Model model) {
    model.addAttribute("today", today());
    model.addAttribute("lines", list.lines(today()));
    return "dossier/list";
  }

  @GetMapping("/dossiers/{code}")
  @ForStaff
  String dossier(@PathVariable String code, Model model) {
    model.addAttribute("dossier", dossiers.of(candidate(code), today()));
    return "dossier/dossier";
  }

  @GetMapping("/dossiers/{code}/disclosures/new")
  @ForDossier
  String disclose(@PathVariable String code, Model model) {
    model.addAttribute("form", DisclosureForm.fresh());
    return disclosurePage(candidate(code), model);
  }

  @PostMapping("/dossiers/{code}/disclosures/new")
  @ForDossier
  String disclose(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable DisclosureForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidate(code);
    if (!forms.store(
        form,
        said,
        () ->
            disclosures.save(
                Objects.requireNonNull(form).read(id(candidate), today(), recorder)))) {
      return disclosurePage(candidate, model);
    }
    return stored(candidate, "The disclosure is logged; its clocks stand below.", next);
  }

  @GetMapping("/dossiers/{code}/filings/new")
  @ForDossier
  String file(@PathVariable String code, Model model) {
    model.addAttribute("form", FilingForm.fresh());
    return filingPage(candidate(code), model);
  }

  @PostMapping("/dossiers/{code}/filings/new")
  @ForDossier
  String file(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable FilingForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidate(code);
    if (!forms.store(form, said, () -> store(Objects.requireNonNull(form), candidate))) {
      return filingPage(candidate, model);
    }
    return stored(candidate, "The filing is logged.", next);
  }

  private void store(FilingForm form, Accession candidate) {
    String route = Objects.requireNonNullElse(form.route(), "");
    filings.save(form.read(id(candidate), routes.findByCode(route), today(), recorder));
  }

  private String disclosurePage(Accession candidate, Model model) {
    Map<String, String> kinds = new LinkedHashMap<>();
    Arrays.stream(Disclosure.Kind.values()).forEach(kind -> kinds.put(kind.name(), kind.word()));
    model.addAttribute("kinds", kinds);
    return page("dossier/new-disclosure", candidate, model);
  }

  private String filingPage(Accession candidate, Model model) {
    Map<String, String> choices = new LinkedHashMap<>();
    routes.findAllByOrderByCode().forEach(route -> choices.put(route.code(), route.name()));
    model.addAttribute("routes", choices);
    return page("dossier/new-filing", candidate, model);
  }

  private String page(String template, Accession candidate, Model model) {
    model.addAttribute("code", candidate.code());
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return template;
  }

  private static String stored(Accession candidate, String sentence, RedirectAttributes next) {
    next.addFlashAttribute("status", sentence);
    next.addAttribute("candidate", candidate.code());
    return "redirect:/dossiers/{candidate}";
  }

  private Accession candidate(String code) {
    return accessions
        .named(code)
        .filter(accession -> candidates.existsById(id(accession)))
        .orElseThrow(NotFound.of("dossier of " + code));
  }

  private static UUID id(Accession accession) {
    return Objects.requireNonNull(accession.id());
  }

  private LocalDate today() {
    return LocalDate.now(clock);
  }
}
