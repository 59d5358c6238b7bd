package trialwood.trial.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.record.Refused;
import trialwood.trial.PlotReading;
import trialwood.trial.TrialRecords;
import trialwood.web.Allowed;
import trialwood.web.Entry;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Typed;

/**
 * The sheet for a round through the plots of one site: plots down in walking order, traits across.
 * Each value is stored or refused on its own, and what was refused stays in its box.
 */
@Controller
@Allowed({Role.BENCH, Role.BREEDER, Role.ADMINISTRATOR, Role.COOPERATOR})
@RequestMapping("/trials/{code}/sites/{site}/sheet")
class SheetPages {

  private final TrialBook book;
  private final SheetBook stored;
  private final TrialRecords records;
  private final Traits traits;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  SheetPages(
      TrialBook book,
      SheetBook stored,
      TrialRecords records,
      Traits traits,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.book = book;
    this.stored = stored;
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
      @RequestParam(defaultValue = "") List<String> trait,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    TrialBook.SiteRow planted =
        book.site(code, site)
            .filter(at -> account.mayEnter(at.siteId()))
            .orElseThrow(NotFound.of("trial %s at %s".formatted(code, site)));
    List<Trait> possible =
        traits.findByCropIdOrderByCode(book.trial(code).orElseThrow().cropId()).stream()
            .filter(one -> one.takenOn().contains("plot"))
            .toList();
    page.addAttribute("site", planted);
    page.addAttribute("coded", account.role() == Role.COOPERATOR);
    page.addAttribute("possible", possible);
    page.addAttribute(
        "chosen", possible.stream().filter(one -> trait.contains(one.code())).toList());
    page.addAttribute("plots", book.plots(planted.id(), LocalDate.now(clock)));
    page.addAttribute(
        "people",
        account.role() == Role.COOPERATOR ? List.of() : persons.findByActiveTrueOrderByInitials());
  }

  @GetMapping
  String open(
      @RequestParam Optional<String> on,
      @ModelAttribute("chosen") List<Trait> chosen,
      @ModelAttribute("plots") List<TrialBook.PlotRow> plots,
      Model page) {
    String day = on.filter(text -> !text.isBlank()).orElse(LocalDate.now(clock).toString());
    page.addAttribute("form", SheetForm.empty(plots, chosen.size(), day, null));
    page.addAttribute("known", known(day, plots, chosen));
    return "trial/sheet";
  }

  @PostMapping
  String store(
      @ModelAttribute("form") @Nullable SheetForm form,
      BindingResult said,
      @ModelAttribute("chosen") List<Trait> chosen,
      @ModelAttribute("plots") List<TrialBook.PlotRow> plots,
      @AuthenticationPrincipal SignedIn account,
      Model page) {
    if (form == null || said.hasErrors()) {
      throw new Refused("rows", "This is no sheet of these plots.");
    }
    String day = form.on() == null ? "" : form.on();
    SheetForm left = SheetForm.empty(plots, chosen.size(), day, form.by());
    BindingResult refused = new BeanPropertyBindingResult(left, "form");
    AtomicInteger kept = new AtomicInteger();
    if (forms.store(form, said, () -> keep(form, chosen, plots, account, left, refused, kept))) {
      page.addAttribute(
          "status",
          "Stored: %d of %d values.".formatted(kept.get(), kept.get() + refused.getErrorCount()));
    } else {
      left.fill(form, plots);
      refused.addAllErrors(said);
    }
    page.addAttribute("form", left);
    page.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", refused);
    page.addAttribute("known", known(day, plots, chosen));
    return "trial/sheet";
  }

  private void keep(
      SheetForm form,
      List<Trait> chosen,
      List<TrialBook.PlotRow> plots,
      SignedIn account,
      SheetForm left,
      BindingResult refused,
      AtomicInteger kept) {
    LocalDate today = LocalDate.now(clock);
    Entry entry = new Entry();
    LocalDate day = entry.day("on", form.on(), today);
    UUID person = Optional.ofNullable(entry.person("by", form.by())).orElse(account.personId());
    entry.orRefuse();
    for (int row = 0; row < plots.size(); row++) {
      for (int column = 0; column < chosen.size(); column++) {
        UUID plot = plots.get(row).unitId();
        Trait trait = chosen.get(column);
        String typed = form.typed(plot, column);
        if (typed.isEmpty()) {
          continue;
        }
        try {
          records.observe(
              new PlotReading(
                  plot, trait.id(), day, SheetForm.read(trait, typed, today), null, person));
          kept.incrementAndGet();
        } catch (Refused no) {
          left.rows().get(row).values().set(column, typed);
          refused.rejectValue(
              "rows[%d].values[%d]".formatted(row, column), "refused", no.getMessage());
        }
      }
    }
  }

  private Map<String, SheetBook.Stored> known(
      String day, List<TrialBook.PlotRow> plots, List<Trait> chosen) {
    return Typed.date(day, LocalDate.now(clock))
        .map(on -> stored.on(on, plots, chosen))
        .orElse(Map.of());
  }
}
