package trialwood.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Reopening;
import trialwood.gate.PastDecisions;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.people.SignedIn;
import trialwood.record.Recorder;
import trialwood.web.Entry;
import trialwood.web.ForBreeder;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Takes a discard back, with a reason. */
@Controller
@ForBreeder
@RequestMapping("/candidates/{code}/reopen")
class ReopenPage {

  private final Accessions accessions;
  private final Candidates candidates;
  private final PastDecisions decisions;
  private final Reopening reopening;
  private final Persons persons;
  private final Recorder recorder;
  private final Forms forms;
  private final Clock clock;

  ReopenPage(
      Accessions accessions,
      Candidates candidates,
      PastDecisions decisions,
      Reopening reopening,
      Persons persons,
      Recorder recorder,
      Forms forms,
      Clock clock) {
    this.accessions = accessions;
    this.candidates = candidates;
    this.decisions = decisions;
    this.reopening = reopening;
    this.persons = persons;
    this.recorder = recorder;
    this.forms = forms;
    this.clock = clock;
  }

  /**
   * @param by id of the person who reopens it
   */
  record ReopenForm(@Nullable UUID formKey, @Nullable String reason, @Nullable UUID by)
      implements Form {}

  @GetMapping
  String blank(@PathVariable String code, @AuthenticationPrincipal SignedIn account, Model page) {
    page.addAttribute("form", new ReopenForm(UUID.randomUUID(), "", account.personId()));
    return page(accession(code), page);
  }

  @PostMapping
  String reopen(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable ReopenForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    Accession accession = accession(code);
    candidate(accession);
    if (!forms.store(form, said, () -> reopen(accession, Objects.requireNonNull(form)))) {
      return page(accession, page);
    }
    next.addFlashAttribute(
        "status",
        "%s is reopened and waits at the gate of %s again."
            .formatted(accession.code(), candidate(accession).stage().word()));
    next.addAttribute("accession", accession.code());
    return "redirect:/candidates/{accession}";
  }

  private void reopen(Accession accession, ReopenForm form) {
    Entry entry = new Entry();
    String reason = entry.words("reason", form.reason(), "Say why it is looked at again.");
    if (form.by() == null) {
      entry.wrong("by", "Pick who decides.");
    }
    entry.orRefuse();
    reopening.reopen(id(accession), LocalDate.now(clock), reason, recorder.by(form.by()));
  }

  private String page(Accession accession, Model page) {
    page.addAttribute("accession", accession);
    page.addAttribute("candidate", candidate(accession));
    decisions.findByAccessionIdOrderByOnDateDescIdDesc(id(accession)).stream()
        .findFirst()
        .ifPresent(decision -> page.addAttribute("decision", decision));
    page.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "desk/reopen";
  }

  private Accession accession(String code) {
    return accessions.named(code).orElseThrow(NotFound.of("such candidate"));
  }

  private Candidate candidate(Accession accession) {
    return candidates.findById(id(accession)).orElseThrow(NotFound.of("such candidate"));
  }

  private static UUID id(Accession accession) {
    return Objects.requireNonNull(accession.id());
  }
}
