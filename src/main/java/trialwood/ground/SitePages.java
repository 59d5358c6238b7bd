package trialwood.ground;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.record.History;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The sites, and what is said of one. */
@Controller
class SitePages {

  private final Sites sites;
  private final History history;
  private final Forms forms;

  SitePages(Sites sites, History history, Forms forms) {
    this.sites = sites;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/sites")
  @ForStaff
  String list(Model page) {
    page.addAttribute("sites", sites.findAllByOrderByCode());
    return "ground/sites";
  }

  @GetMapping("/ground/sites/{code}")
  @ForStaff
  String show(@PathVariable String code, Model page) {
    Site site = site(code);
    page.addAttribute("site", site);
    page.addAttribute("words", SiteForm.of(site).words());
    page.addAttribute(
        "changes",
        Change.of(
            history.of(Site.class, Objects.requireNonNull(site.id())),
            then -> SiteForm.of(then).words()));
    return "ground/site";
  }

  @GetMapping("/ground/sites/{code}/edit")
  @ForKeeper
  String edit(@PathVariable String code, Model page) {
    SiteForm form = SiteForm.of(site(code));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "ground/edit-site";
  }

  @PostMapping("/ground/sites/{code}/edit")
  @ForKeeper
  String change(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable SiteForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    site(code);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(site(code)))) {
      EditForm.showBoth(form, SiteForm.of(site(code)), said, page);
      return "ground/edit-site";
    }
    next.addFlashAttribute("status", "What is said of " + code + " is changed.");
    return "redirect:/ground/sites/{code}";
  }

  private Site site(String code) {
    return sites.findByCode(code).orElseThrow(NotFound.of("such site"));
  }
}
