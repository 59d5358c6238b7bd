package trialwood.container.web;

import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.Lots;
import trialwood.container.NewPlant;
import trialwood.container.NewShift;
import trialwood.container.Numbering;
import trialwood.container.Pots;
import trialwood.container.Potting;
import trialwood.container.web.LotBook.Head;
import trialwood.container.web.PlantBook.Standing;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Shifting plants into larger pots, and giving plants numbers. */
@Controller
class ShiftPages {

  private static final int MOST_NUMBERED = 500;

  private final LotBook book;
  private final PlantBook plants;
  private final Lots lots;
  private final Potting potting;
  private final Numbering numbering;
  private final Forms forms;
  private final Choices choices;

  ShiftPages(
      LotBook book,
      PlantBook plants,
      Lots lots,
      Potting potting,
      Numbering numbering,
      Forms forms,
      Choices choices) {
    this.book = book;
    this.plants = plants;
    this.lots = lots;
    this.potting = potting;
    this.numbering = numbering;
    this.forms = forms;
    this.choices = choices;
  }

  /**
   * @param lot label of the new lot
   * @param plants the numbered plants among those shifted
   */
  record ShiftForm(
      @Nullable UUID formKey,
      @Nullable String lot,
      @Nullable UUID containerClass,
      @Nullable String litres,
      @Nullable String on,
      @Nullable String number,
      @Nullable String yard,
      @Nullable List<UUID> plants,
      @Nullable UUID by)
      implements Form {}

  /**
   * @param number how many get a number
   */
  record NumberForm(
      @Nullable UUID formKey, @Nullable String number, @Nullable String from, @Nullable UUID by)
      implements Form {}

  @GetMapping("/containers/{label}/shift")
  @ForBench
  String openShift(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute(
        "form", new ShiftForm(UUID.randomUUID(), "", null, "", today, "", "", List.of(), null));
    return page("container/shift", lot(label), model);
  }

  @PostMapping("/containers/{label}/shift")
  @ForBench
  String shift(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable ShiftForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    Pots pots =
        new Pots(
            boxes.chosen("containerClass", form.containerClass(), "Choose the class of pots."),
            boxes.decimalIfAny("litres", form.litres()),
            boxes.date("on", form.on()),
            boxes.count("number", form.number(), "Write how many are shifted, such as 12."),
            Boxes.words(form.yard()),
            null);
    NewShift shift =
        new NewShift(
            Boxes.text(form.lot()),
            pots,
            Objects.requireNonNullElse(form.plants(), List.of()),
            form.by());
    if (!forms.store(form, said, () -> potting.shift(lot.lotId(), shift))) {
      return page("container/shift", lot, model);
    }
    next.addFlashAttribute("status", "%d shifted from %s.".formatted(pots.number(), lot.label()));
    next.addAttribute("label", shift.label());
    return "redirect:/containers/{label}";
  }

  @GetMapping("/containers/{label}/plants")
  @ForBench
  String openNumbers(@PathVariable String label, Model model) {
    model.addAttribute("form", new NumberForm(UUID.randomUUID(), "", choices.todayTyped(), null));
    return page("container/number", lot(label), model);
  }

  @PostMapping("/containers/{label}/plants")
  @ForBench
  String number(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable NumberForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    var from = boxes.date("from", form.from());
    int number = boxes.count("number", form.number(), "Write how many get a number, such as 12.");
    if (!said.hasFieldErrors("number") && (number < 1 || number > MOST_NUMBERED)) {
      boxes.wrong("number", "From 1 to %d plants at a time.".formatted(MOST_NUMBERED));
    }
    int last =
        plants.plants(lot.lotId(), choices.today()).stream()
            .mapToInt(Standing::number)
            .max()
            .orElse(0);
    List<NewPlant> plants =
        IntStream.rangeClosed(last + 1, last + Math.min(number, MOST_NUMBERED))
            .mapToObj(n -> new NewPlant("%s-%02d".formatted(lot.label(), n), n))
            .toList();
    if (!forms.store(form, said, () -> numbering.number(lot.lotId(), plants, from, form.by()))) {
      return page("container/number", lot, model);
    }
    next.addFlashAttribute("status", "%d plants numbered.".formatted(number));
    next.addAttribute("label", lot.label());
    return "redirect:/containers/{label}";
  }

  private Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  private String page(String template, Head lot, Model model) {
    model.addAttribute("lot", lot);
    model.addAttribute("ledger", lots.ledger(lot.lotId(), choices.today()));
    model.addAttribute("plants", plants.plants(lot.lotId(), choices.today()));
    model.addAttribute("classes", choices.classes());
    model.addAttribute("people", choices.people());
    return template;
  }
}
