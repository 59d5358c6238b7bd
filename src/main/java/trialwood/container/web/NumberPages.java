package trialwood.container.web;

import java.time.LocalDate;
import java.util.List;
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
import trialwood.container.NewPlant;
import trialwood.container.Numbering;
import trialwood.container.web.LotBook.Head;
import trialwood.container.web.PlantBook.Standing;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;

/** Giving plants of a lot numbers of their own. */
@Controller
class NumberPages {

  private static final int MOST_NUMBERED = 500;

  private final LotForms lots;
  private final PlantBook plants;
  private final Numbering numbering;
  private final Forms forms;
  private final Choices choices;

  NumberPages(LotForms lots, PlantBook plants, Numbering numbering, Forms forms, Choices choices) {
    this.lots = lots;
    this.plants = plants;
    this.numbering = numbering;
    this.forms = forms;
    this.choices = choices;
  }

  /**
   * @param number how many get a number
   */
  record NumberForm(
      @Nullable UUID formKey, @Nullable String number, @Nullable String from, @Nullable UUID by)
      implements Form {}

  @GetMapping("/containers/{label}/plants")
  @ForBench
  String open(@PathVariable String label, Model model) {
    model.addAttribute("form", new NumberForm(UUID.randomUUID(), "", choices.todayTyped(), null));
    return page(lots.lot(label), model);
  }

  @PostMapping("/containers/{label}/plants")
  @ForBench
  String number(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable NumberForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    LocalDate from = boxes.date("from", form.from());
    int number = boxes.count("number", form.number(), "Write how many get a number, such as 12.");
    if (!said.hasFieldErrors("number") && (number < 1 || number > MOST_NUMBERED)) {
      boxes.wrong("number", "From 1 to %d plants at a time.".formatted(MOST_NUMBERED));
    }
    List<NewPlant> added = added(lot, Math.min(number, MOST_NUMBERED));
    return forms.store(form, said, () -> numbering.number(lot.lotId(), added, from, form.by()))
        ? LotForms.backTo(lot.label(), "%d plants numbered.".formatted(number), next)
        : page(lot, model);
  }

  private String page(Head lot, Model model) {
    model.addAttribute("plants", plants.plants(lot.lotId(), choices.today()));
    return lots.page("container/number", lot, model);
  }

  /** The next numbers after those given. */
  private List<NewPlant> added(Head lot, int number) {
    int last =
        plants.plants(lot.lotId(), choices.today()).stream()
            .mapToInt(Standing::number)
            .max()
            .orElse(0);
    return IntStream.rangeClosed(last + 1, last + number)
        .mapToObj(n -> new NewPlant("%s-%02d".formatted(lot.label(), n), n))
        .toList();
  }
}
