package trialwood.gate.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Set;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.gate.Decisions;
import trialwood.gate.Reviews;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.people.SignedIn;
import trialwood.web.ForBreeder;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Typed;

/** One candidate at a gate: what the records say, and what the breeder decides. */
@Controller
@RequestMapping("/gates/{gate}/{code}")
class DecisionPage {

  private final Accessions accessions;
  private final Candidates candidates;
  private final Reviews reviews;
  private final Decisions decisions;
  private final Minutes minutes;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  DecisionPage(
      Accessions accessions,
      Candidates candidates,
      Reviews reviews,
      Decisions decisions,
      Minutes minutes,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.accessions = accessions;
    this.candidates = candidates;
    this.reviews = reviews;
    this.decisions = decisions;
    this.minutes = minutes;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping
  @ForStaff
  String show(
      @PathVariable String gate,
      @PathVariable String code,
      @RequestParam(required = false) @Nullable String asOf,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    LocalDate today = LocalDate.now(clock);
    LocalDate day = day(asOf, today);
    page.addAttribute("form", DecisionForm.fresh(day, account.personId()));
    return show(gate, code, day, page);
  }

  @PostMapping
  @ForBreeder
  String decide(
      @PathVariable String gate,
      @PathVariable String code,
      @ModelAttribute("form") @Nullable DecisionForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    Stage stage = Gates.named(gate);
    Accession accession = accessions.named(code).orElseThrow(NotFound.of("candidate"));
    LocalDate today = LocalDate.now(clock);
    if (!forms.store(
        form,
        said,
        () -> decisions.decide(Objects.requireNonNull(form).ruling(id(accession), stage, today)))) {
      LocalDate day = day(form == null ? null : form.on(), today);
      boolean reviewed = !reviews.of(stage, Set.of(id(accession)), day).isEmpty();
      return show(gate, code, reviewed ? day : today, page);
    }
    next.addFlashAttribute("status", accession.code() + ": the decision is on record.");
    return "redirect:/gates/" + stage.key();
  }

  private String show(String gate, String code, LocalDate day, Model page) {
    Stage stage = Gates.named(gate);
    Accession accession = accessions.named(code).orElseThrow(NotFound.of("candidate"));
    Candidate candidate = candidates.findById(id(accession)).orElseThrow(NotFound.of("candidate"));
    page.addAttribute("gate", stage);
    page.addAttribute("heading", Gates.title(stage));
    page.addAttribute("accession", accession);
    page.addAttribute("candidate", candidate);
    page.addAttribute("asOf", day);
    page.addAttribute(
        "review",
        reviews.of(stage, Set.of(id(accession)), day).values().stream()
            .findFirst()
            .map(ReviewView::of)
            .orElse(null));
    page.addAttribute("open", isOpen(candidate, stage));
    page.addAttribute("past", minutes.of(accession));
    page.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "gate/decision";
  }

  /** A date that cannot be read, or has not come, is today. */
  private static LocalDate day(@Nullable String typed, LocalDate today) {
    return Typed.date(typed == null ? "" : typed, today)
        .filter(day -> !day.isAfter(today))
        .orElse(today);
  }

  private static boolean isOpen(Candidate candidate, Stage gate) {
    return candidate.stage() == gate
        && List.of(Standing.ACTIVE, Standing.ON_HOLD).contains(candidate.standing());
  }

  private static UUID id(Accession accession) {
    return Objects.requireNonNull(accession.id());
  }
}
