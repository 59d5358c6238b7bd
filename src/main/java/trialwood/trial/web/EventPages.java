package trialwood.trial.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.trial.SiteEvent;
import trialwood.trial.TrialRecords;
import trialwood.web.Allowed;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Takes what befell a site of a trial, and what it takes out of the reckoning. */
@Controller
@Allowed({Role.BENCH, Role.BREEDER, Role.ADMINISTRATOR, Role.COOPERATOR})
@RequestMapping("/trials/{code}/sites/{site}/events/new")
class EventPages {

  private final TrialBook book;
  private final TrialRecords records;
  private final Traits traits;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  EventPages(
      TrialBook book,
      TrialRecords records,
      Traits traits,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.book = book;
    this.records = records;
    this.traits = traits;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  @ModelAttribute
  void frame(
      @PathVariable String code,
      @PathVariable String site,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    TrialBook.SiteRow planted =
        book.site(code, site)
            .filter(at -> account.mayEnter(at.siteId()))
            .orElseThrow(NotFound.of("trial %s at %s".formatted(code, site)));
    TrialBook.TrialRow trial = book.trial(code).orElseThrow();
    Map<String, String> kinds = new LinkedHashMap<>();
    Arrays.stream(SiteEvent.Kind.values()).forEach(kind -> kinds.put(kind.name(), kind.word()));
    page.addAttribute("site", planted);
    page.addAttribute("kinds", kinds);
    page.addAttribute(
        "people",
        account.role() == Role.COOPERATOR ? List.of() : persons.findByActiveTrueOrderByInitials());
    page.addAttribute(
        "taken",
        traits.findByCropIdOrderByCode(trial.cropId()).stream()
            .filter(trait -> trait.takenOn().contains("plot"))
            .toList());
  }

  @GetMapping
  String open(Model page) {
    page.addAttribute("form", EventForm.fresh(LocalDate.now(clock)));
    return "trial/event";
  }

  @PostMapping
  String report(
      @ModelAttribute("form") @Nullable EventForm form,
      BindingResult said,
      @ModelAttribute("site") TrialBook.SiteRow site,
      @ModelAttribute("taken") List<Trait> taken,
      RedirectAttributes next) {
    LocalDate today = LocalDate.now(clock);
    if (form == null
        || !forms.store(
            form,
            said,
            () -> records.report(form.read(site, book.plots(site.id(), today), taken, today)))) {
      return "trial/event";
    }
    next.addFlashAttribute("status", "The event is on record.");
    next.addAttribute("trial", site.trial());
    next.addAttribute("place", site.site());
    return "redirect:/trials/{trial}/sites/{place}";
  }
}
