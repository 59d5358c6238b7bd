package trialwood.gate.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
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
import trialwood.candidate.Stage;
import trialwood.gate.Attestations;
import trialwood.gate.Criterion;
import trialwood.gate.GatePolicies;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.people.SignedIn;
import trialwood.record.Recorder;
import trialwood.web.ForBreeder;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Where a person says of a candidate what no record can compute. */
@Controller
@RequestMapping("/gates/{gate}/{code}/attest/{criterion}")
@ForBreeder
class AttestationPage {

  private final Accessions accessions;
  private final GatePolicies policies;
  private final Attestations attestations;
  private final Persons persons;
  private final Recorder recorder;
  private final Forms forms;
  private final Clock clock;

  AttestationPage(
      Accessions accessions,
      GatePolicies policies,
      Attestations attestations,
      Persons persons,
      Recorder recorder,
      Forms forms,
      Clock clock) {
    this.accessions = accessions;
    this.policies = policies;
    this.attestations = attestations;
    this.persons = persons;
    this.recorder = recorder;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping
  String show(
      @PathVariable String gate,
      @PathVariable String code,
      @PathVariable String criterion,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    page.addAttribute("form", AttestationForm.fresh(LocalDate.now(clock), account.personId()));
    return show(Gates.named(gate), accession(code), criterion, page);
  }

  @PostMapping
  String say(
      @PathVariable String gate,
      @PathVariable String code,
      @PathVariable String criterion,
      @ModelAttribute("form") @Nullable AttestationForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    Stage stage = Gates.named(gate);
    Accession accession = accession(code);
    Criterion asked = asked(stage, accession, criterion);
    LocalDate today = LocalDate.now(clock);
    if (!forms.store(
        form,
        said,
        () ->
            attestations.save(
                Objects.requireNonNull(form)
                    .attestation(
                        Objects.requireNonNull(accession.id()), asked.code(), today, recorder)))) {
      return show(stage, accession, criterion, page);
    }
    next.addFlashAttribute("status", asked.label() + ": what was said is on record.");
    next.addAttribute("code", accession.code());
    return "redirect:/gates/" + stage.key() + "/{code}";
  }

  private String show(Stage gate, Accession accession, String criterion, Model page) {
    page.addAttribute("gate", gate);
    page.addAttribute("accession", accession);
    page.addAttribute("criterion", asked(gate, accession, criterion));
    page.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "gate/attestation";
  }

  private Accession accession(String code) {
    return accessions.named(code).orElseThrow(NotFound.of("candidate"));
  }

  private Criterion asked(Stage gate, Accession accession, String code) {
    return policies.inForce(List.of(accession.cropId()), LocalDate.now(clock)).stream()
        .flatMap(policy -> policy.at(gate).stream())
        .filter(criterion -> criterion.code().equals(code) && criterion.ask() == null)
        .findFirst()
        .orElseThrow(NotFound.of("criterion"));
  }
}
