package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.analysis.Interval;
import trialwood.analysis.rate.TrayCount;
import trialwood.analysis.rate.TrayPosterior;
import trialwood.analysis.rate.TrayPrior;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.propagation.LikenessPrior;
import trialwood.propagation.TrayLikeness;
import trialwood.propagation.TrayLikenessChoices;
import trialwood.web.Entry;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Form;
import trialwood.web.Forms;

/** What the nursery's own trays teach, beside what is usual, and which of the two is in force. */
@Controller
class TrayLikenessPage {

  /** Trays that plainly disagree: the prior decides how much that counts. */
  private static final List<TrayCount> EXAMPLE =
      List.of(new TrayCount(23, 24), new TrayCount(22, 24), new TrayCount(9, 24));

  private static final double EXAMPLE_LINE = 0.7;

  private final TrayLikeness likeness;
  private final TrayLikenessChoices choices;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  TrayLikenessPage(
      TrayLikeness likeness,
      TrayLikenessChoices choices,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.likeness = likeness;
    this.choices = choices;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  /** One prior and what it makes of the example. */
  record Row(LikenessPrior prior, double mean, Interval interval, double chance) {

    static Row of(LikenessPrior named, TrayPrior prior) {
      TrayPosterior example = TrayPosterior.of(EXAMPLE, prior);
      return new Row(
          named,
          prior.likeness().mean(),
          example.interval(0.95),
          example.chanceAtLeast(EXAMPLE_LINE));
    }
  }

  record ChoiceForm(
      @Nullable UUID formKey, @Nullable String prior, @Nullable String reason, @Nullable String by)
      implements Form {

    void store(TrayLikeness likeness, LocalDate today) {
      Entry entry = new Entry();
      String named = entry.words("prior", prior, "Say which one holds.");
      String because = entry.words("reason", reason, "Say why.");
      UUID person = entry.id("by", by, "Pick who decided it.");
      LikenessPrior chosen =
          Stream.of(LikenessPrior.values())
              .filter(one -> one.name().equals(named))
              .findFirst()
              .orElse(LikenessPrior.USUAL);
      if (!named.isEmpty() && !chosen.name().equals(named)) {
        entry.wrong("prior", "Pick one of the two.");
      }
      entry.orRefuse();
      likeness.choose(today, chosen, because, person);
    }
  }

  @GetMapping("/ground/tray-likeness")
  @ForStaff
  String show(Model page) {
    page.addAttribute("form", new ChoiceForm(UUID.randomUUID(), null, null, null));
    return told(page);
  }

  @PostMapping("/ground/tray-likeness")
  @ForKeeper
  String choose(
      @ModelAttribute("form") @Nullable ChoiceForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    LocalDate today = LocalDate.now(clock);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).store(likeness, today))) {
      return told(page);
    }
    next.addFlashAttribute("status", "From today on the other one is in force.");
    return "redirect:/ground/tray-likeness";
  }

  private String told(Model page) {
    LocalDate today = LocalDate.now(clock);
    var history = likeness.history(today);
    page.addAttribute("history", history);
    page.addAttribute("chosen", likeness.chosen(today));
    page.addAttribute(
        "rows",
        List.of(
            Row.of(LikenessPrior.USUAL, TrayPrior.USUAL),
            Row.of(LikenessPrior.OWN, history.prior())));
    Map<String, String> words = new LinkedHashMap<>();
    Stream.of(LikenessPrior.values()).forEach(prior -> words.put(prior.name(), prior.word()));
    page.addAttribute("priors", words);
    page.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    page.addAttribute("choices", choices.findAllByOrderByOnDateDescIdDesc());
    page.addAttribute(
        "initials",
        persons.findAll().stream().collect(Collectors.toMap(Person::id, Person::initials)));
    return "ground/tray-likeness";
  }
}
