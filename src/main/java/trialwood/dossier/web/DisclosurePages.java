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
import trialwood.dossier.Disclosure;
import trialwood.dossier.Disclosures;
import trialwood.lineage.Accession;
import trialwood.people.Persons;
import trialwood.record.Check;
import trialwood.record.Recorder;
import trialwood.web.ForDossier;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Where disclosures are logged and put right. */
@Controller
@ForDossier
class DisclosurePages {

  private final DossierCandidates candidates;
  private final Disclosures disclosures;
  private final Persons persons;
  private final Recorder recorder;
  private final Forms forms;
  private final Clock clock;

  DisclosurePages(
      DossierCandidates candidates,
      Disclosures disclosures,
      Persons persons,
      Recorder recorder,
      Forms forms,
      Clock clock) {
    this.candidates = candidates;
    this.disclosures = disclosures;
    this.persons = persons;
    this.recorder = recorder;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/dossiers/{code}/disclosures/new")
  String blank(@PathVariable String code, Model model) {
    model.addAttribute("form", DisclosureForm.fresh());
    return page("dossier/new-disclosure", candidates.named(code), model);
  }

  @PostMapping("/dossiers/{code}/disclosures/new")
  String log(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable DisclosureForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidates.named(code);
    UUID id = DossierCandidates.id(candidate);
    if (!forms.store(
        form,
        said,
        () -> disclosures.save(Objects.requireNonNull(form).read(id, today(), recorder)))) {
      return page("dossier/new-disclosure", candidate, model);
    }
    return stored(candidate, "The disclosure is logged; its clocks stand below.", next);
  }

  @GetMapping("/dossiers/{code}/disclosures/{id}/correct")
  String filled(@PathVariable String code, @PathVariable UUID id, Model model) {
    Accession candidate = candidates.named(code);
    model.addAttribute("form", DisclosureForm.of(logged(candidate, id)));
    return page("dossier/correct-disclosure", candidate, model);
  }

  @PostMapping("/dossiers/{code}/disclosures/{id}/correct")
  String correct(
      @PathVariable String code,
      @PathVariable UUID id,
      @Valid @ModelAttribute("form") @Nullable DisclosureForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Accession candidate = candidates.named(code);
    Disclosure earlier = logged(candidate, id);
    if (!forms.store(form, said, () -> replace(earlier, Objects.requireNonNull(form)))) {
      return page("dossier/correct-disclosure", candidate, model);
    }
    return stored(candidate, "The disclosure is corrected; what it said before is kept.", next);
  }

  private void replace(Disclosure earlier, DisclosureForm form) {
    Check.that()
        .holds(
            !disclosures.existsBySupersedesId(Objects.requireNonNull(earlier.id())),
            "earlier",
            "Somebody has corrected this meanwhile. Open the dossier and look at what stands now.")
        .orRefuse();
    disclosures.save(form.correct(earlier, today(), recorder));
  }

  private Disclosure logged(Accession candidate, UUID id) {
    return disclosures
        .findById(id)
        .filter(it -> it.accessionId().equals(candidate.id()))
        .orElseThrow(NotFound.of("disclosure of " + candidate.code()));
  }

  private String page(String template, Accession candidate, Model model) {
    Map<String, String> kinds = new LinkedHashMap<>();
    Arrays.stream(Disclosure.Kind.values()).forEach(kind -> kinds.put(kind.name(), kind.word()));
    model.addAttribute("kinds", kinds);
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
