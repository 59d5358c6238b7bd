package trialwood.gate.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.candidate.CandidateMarks;
import trialwood.candidate.Stage;
import trialwood.gate.Outlook;
import trialwood.gate.Reviews;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.web.ForStaff;
import trialwood.web.NotFound;
import trialwood.web.Typed;

/** What further trays would settle for one candidate at a gate; simulated when asked for. */
@Controller
class OutlookPage {

  private static final String METHOD =
      "The truth (p, ρ) is drawn from what the trays so far leave to believe, further trays are"
          + " drawn under it, and the criterion is asked again of all trays together, as of one run;"
          + " 2,000 futures, fixed seed. The check’s trays stay as they were counted. Simulation"
          + " error: √(s(1 − s) ÷ 2,000).";

  private final Accessions accessions;
  private final Reviews reviews;
  private final CandidateMarks marks;
  private final Clock clock;

  OutlookPage(Accessions accessions, Reviews reviews, CandidateMarks marks, Clock clock) {
    this.accessions = accessions;
    this.reviews = reviews;
    this.marks = marks;
    this.clock = clock;
  }

  @GetMapping("/gates/{gate}/{code}/further-trays")
  @ForStaff
  String furtherTrays(
      @PathVariable String gate,
      @PathVariable String code,
      @RequestParam(required = false) @Nullable String asOf,
      Model page) {
    Stage stage = Gates.named(gate);
    Accession accession = accessions.named(code).orElseThrow(NotFound.of("candidate"));
    UUID id = Objects.requireNonNull(accession.id());
    LocalDate today = LocalDate.now(clock);
    LocalDate day = Typed.date(asOf == null ? "" : asOf, today).orElse(today);
    boolean outstanding = marks.outstanding(Set.of(id), day).contains(id);
    List<Outlook> outlooks =
        Optional.ofNullable(reviews.of(stage, Set.of(id), day).get(id)).stream()
            .flatMap(review -> review.findings().stream())
            .flatMap(finding -> Outlook.of(finding, outstanding).stream())
            .toList();
    page.addAttribute("gate", stage);
    page.addAttribute("accession", accession);
    page.addAttribute("asOf", day);
    page.addAttribute("method", METHOD);
    page.addAttribute(
        "records",
        Map.of(
            "/gates/%s/%s?asOf=%s".formatted(stage.key(), accession.code(), day),
            "What the records say of " + accession.code()));
    page.addAttribute("outlooks", outlooks);
    return "gate/further-trays";
  }
}
