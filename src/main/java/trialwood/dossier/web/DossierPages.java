package trialwood.dossier.web;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import trialwood.dossier.Dossiers;
import trialwood.web.ForStaff;
import trialwood.web.Place;

/** The list of dossiers and each of them. */
@Controller
class DossierPages {

  private final DossierList list;
  private final Dossiers dossiers;
  private final DossierCandidates candidates;
  private final Clock clock;

  DossierPages(DossierList list, Dossiers dossiers, DossierCandidates candidates, Clock clock) {
    this.list = list;
    this.dossiers = dossiers;
    this.candidates = candidates;
    this.clock = clock;
  }

  @GetMapping("/dossiers")
  @ForStaff
  @Place(key = "dossiers", label = "Dossiers", order = 80)
  String list(Model model) {
    LocalDate today = LocalDate.now(clock);
    model.addAttribute("today", today);
    model.addAttribute("lines", list.lines(today));
    return "dossier/list";
  }

  @GetMapping("/dossiers/{code}")
  @ForStaff
  String dossier(@PathVariable String code, Model model) {
    model.addAttribute("dossier", dossiers.of(candidates.named(code), LocalDate.now(clock)));
    return "dossier/dossier";
  }
}
