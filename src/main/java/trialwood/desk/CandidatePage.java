package trialwood.desk;

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
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.candidate.Candidate;
import trialwood.candidate.Candidates;
import trialwood.candidate.Stage;
import trialwood.candidate.Standing;
import trialwood.evidence.LifeEvent;
import trialwood.gate.Reviews;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.record.History;
import trialwood.stock.StockBook;
import trialwood.web.Change;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;

/** One accession: its life line, what its next gate asks, and everything that happened. */
@Controller
class CandidatePage {

  private final Accessions accessions;
  private final Candidates candidates;
  private final Story story;
  private final Reviews reviews;
  private final LivingUnits living;
  private final StockBook stock;
  private final History history;
  private final Clock clock;

  CandidatePage(
      Accessions accessions,
      Candidates candidates,
      Story story,
      Reviews reviews,
      LivingUnits living,
      StockBook stock,
      History history,
      Clock clock) {
    this.accessions = accessions;
    this.candidates = candidates;
    this.story = story;
    this.reviews = reviews;
    this.living = living;
    this.stock = stock;
    this.history = history;
    this.clock = clock;
  }

  @GetMapping({"/candidates/{code}", "/accessions/{code}"})
  @ForStaff
  String accession(
      @PathVariable String code, @AuthenticationPrincipal SignedIn account, Model model) {
    Accession accession = accessions.named(code).orElseThrow(NotFound.of("accession " + code));
    UUID id = Objects.requireNonNull(accession.id());
    LocalDate today = LocalDate.now(clock);
    List<LifeEvent> events = story.of(id, accession.code());
    model.addAttribute("accession", accession);
    model.addAttribute("seedParent", parent(accession.parentage().seedParentId()));
    model.addAttribute("pollenParent", parent(accession.parentage().pollenParentId()));
    model.addAttribute("story", events);
    model.addAttribute("units", living.of(id, today));
    model.addAttribute("dangers", StockBook.warnings(stock.of(id, today)));
    model.addAttribute("doubts", living.doubts(id));
    model.addAttribute(
        "changes",
        Change.of(history.of(Accession.class, id), then -> AccessionForm.of(then).words()));
    candidates
        .findById(id)
        .ifPresent(
            candidate -> {
              model.addAttribute("reopens", reopens(candidate, account));
              atItsGate(candidate, events, today, model);
            });
    return "desk/candidate";
  }

  private static boolean reopens(Candidate candidate, SignedIn account) {
    return candidate.standing() == Standing.DISCARDED && account.role() == Role.BREEDER;
  }

  private void atItsGate(
      Candidate candidate, List<LifeEvent> events, LocalDate today, Model model) {
    model.addAttribute("candidate", candidate);
    model.addAttribute("lifeLine", story.lifeLine(candidate, events));
    if (candidate.stage() != Stage.RELEASED) {
      model.addAttribute(
          "review",
          reviews
              .of(candidate.stage(), Set.of(candidate.accessionId()), today)
              .get(candidate.accessionId()));
    }
  }

  private String parent(@Nullable UUID id) {
    return id == null ? "" : accessions.findById(id).map(Accession::code).orElse("");
  }
}
