package trialwood.trial.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.trial.TrialRecords;
import trialwood.web.Allowed;
import trialwood.web.Entry;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Puts a value of a plot right; the earlier one stays readable, with the reason. */
@Controller
@Allowed({Role.BENCH, Role.BREEDER, Role.ADMINISTRATOR, Role.COOPERATOR})
@RequestMapping("/trials/{code}/sites/{site}/values/{value}")
class PlotCorrectionPages {

  private final TrialBook book;
  private final SheetBook sheet;
  private final TrialRecords records;
  private final Traits traits;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  PlotCorrectionPages(
      TrialBook book,
      SheetBook sheet,
      TrialRecords records,
      Traits traits,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.book = book;
    this.sheet = sheet;
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
      @PathVariable UUID value,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    TrialBook.SiteRow planted =
        book.site(code, site)
            .filter(at -> account.mayEnter(at.siteId()))
            .orElseThrow(NotFound.of("trial %s at %s".formatted(code, site)));
    SheetBook.Stored stored =
        sheet.one(value, planted.id()).orElseThrow(NotFound.of("value that stands"));
    page.addAttribute("site", planted);
    page.addAttribute("stored", stored);
    page.addAttribute("trait", traits.findById(stored.traitId()).orElseThrow());
    page.addAttribute(
        "people",
        account.role() == Role.COOPERATOR ? List.of() : persons.findByActiveTrueOrderByInitials());
  }

  @GetMapping
  String open(Model page) {
    page.addAttribute("form", new CorrectionForm(UUID.randomUUID(), "", "", null));
    return "trial/correct";
  }

  @PostMapping
  String correct(
      @ModelAttribute("form") @Nullable CorrectionForm form,
      BindingResult said,
      @ModelAttribute("site") TrialBook.SiteRow site,
      @ModelAttribute("stored") SheetBook.Stored stored,
      @ModelAttribute("trait") Trait trait,
      @AuthenticationPrincipal SignedIn account,
      RedirectAttributes next) {
    if (form == null || !forms.store(form, said, () -> replace(form, stored, trait, account))) {
      return "trial/correct";
    }
    next.addFlashAttribute("status", "The value is corrected; the earlier one is kept with it.");
    next.addAttribute("trial", site.trial());
    next.addAttribute("at", site.site());
    next.addAttribute("trait", trait.code());
    next.addAttribute("on", stored.onDate().toString());
    return "redirect:/trials/{trial}/sites/{at}/sheet?trait={trait}&on={on}";
  }

  private void replace(
      CorrectionForm form, SheetBook.Stored stored, Trait trait, SignedIn account) {
    LocalDate today = LocalDate.now(clock);
    Entry entry = new Entry();
    String value = entry.words("value", form.value(), "Type what it should have been.");
    String reason = entry.words("reason", form.reason(), "Say why the earlier value is replaced.");
    UUID person = Optional.ofNullable(entry.person("by", form.by())).orElse(account.personId());
    entry.orRefuse();
    records.correct(stored.id(), SheetForm.read(trait, value, today), reason, person);
  }
}
