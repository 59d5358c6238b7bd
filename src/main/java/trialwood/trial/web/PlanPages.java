package trialwood.trial.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.lineage.Accessions;
import trialwood.people.SignedIn;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.trial.TrialPlanting;
import trialwood.web.ForBreeder;
import trialwood.web.Forms;

/** Plans a trial: the page asks, the tool draws the layout and ties the plots. */
@Controller
@ForBreeder
@RequestMapping("/trials/new")
class PlanPages {

  private final TrialPlanting planting;
  private final Accessions accessions;
  private final Sites sites;
  private final Crops crops;
  private final Forms forms;
  private final Clock clock;

  PlanPages(
      TrialPlanting planting,
      Accessions accessions,
      Sites sites,
      Crops crops,
      Forms forms,
      Clock clock) {
    this.planting = planting;
    this.accessions = accessions;
    this.sites = sites;
    this.crops = crops;
    this.forms = forms;
    this.clock = clock;
  }

  @ModelAttribute("crops")
  Map<String, String> crops() {
    return crops.findAll().stream()
        .collect(Collectors.toMap(crop -> String.valueOf(crop.id()), Crop::commonName));
  }

  @ModelAttribute("siteCodes")
  String siteCodes() {
    return sites.findAllByOrderByCode().stream().map(Site::code).collect(Collectors.joining(", "));
  }

  @GetMapping
  String open(Model page) {
    page.addAttribute("form", PlanForm.fresh(LocalDate.now(clock)));
    return "trial/plan";
  }

  @PostMapping
  String plan(
      @ModelAttribute("form") @Nullable PlanForm form,
      BindingResult said,
      @AuthenticationPrincipal SignedIn account,
      RedirectAttributes next) {
    if (form == null
        || !forms.store(
            form,
            said,
            () ->
                form.plant(
                    planting, accessions, sites, account.personId(), LocalDate.now(clock)))) {
      return "trial/plan";
    }
    next.addFlashAttribute("status", "The trial is laid out; print the layout of each site.");
    next.addAttribute("code", String.valueOf(form.trial()).strip());
    return "redirect:/trials/{code}";
  }
}
