package trialwood.container.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.NewGrade;
import trialwood.container.NewShift;
import trialwood.container.Pots;
import trialwood.container.RootBall;
import trialwood.container.Shifting;
import trialwood.container.Tending;
import trialwood.container.web.LotBook.Head;
import trialwood.record.Checked;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Questions;

/** Shifting plants into larger pots. */
@Controller
class ShiftPages {

  private final LotForms lots;
  private final PlantBook plants;
  private final Shifting shifting;
  private final Tending tending;
  private final Forms forms;
  private final Choices choices;

  ShiftPages(
      LotForms lots,
      PlantBook plants,
      Shifting shifting,
      Tending tending,
      Forms forms,
      Choices choices) {
    this.lots = lots;
    this.plants = plants;
    this.shifting = shifting;
    this.tending = tending;
    this.forms = forms;
    this.choices = choices;
  }

  /**
   * @param lot label of the new lot
   * @param plants the numbered plants among those shifted
   * @param rootBall of the pots they were knocked out of, 0 to 5
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
      @Nullable Integer rootBall,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked)
      implements Form {}

  @GetMapping("/containers/{label}/shift")
  @ForBench
  String openShift(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute(
        "form",
        new ShiftForm(
            UUID.randomUUID(), "", null, "", today, "", "", List.of(), null, null, "", ""));
    return page(lots.lot(label), model);
  }

  @PostMapping("/containers/{label}/shift")
  @ForBench
  String shift(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable ShiftForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
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
    return forms.store(form, said, () -> keep(lot.lotId(), shift, form))
        ? LotForms.backTo(
            shift.label(),
            "%d shifted. Put the new labels in, and leave the old ones until somebody has read both."
                .formatted(pots.number()),
            next)
        : page(lot, model);
  }

  private void keep(UUID lot, NewShift shift, ShiftForm form) {
    Questions questions = new Questions(form.asked(), form.checked());
    questions.ask(shifting.questions(lot, shift));
    Checked checked = questions.orAsk();
    if (form.rootBall() != null) {
      LocalDate day = shift.pots().on();
      tending.grade(lot, new NewGrade(day, null, null, null, form.rootBall(), form.by()), null);
    }
    shifting.shift(lot, shift, checked);
  }

  private String page(Head lot, Model model) {
    model.addAttribute("plants", plants.plants(lot.lotId(), choices.today()));
    model.addAttribute("classes", choices.classes());
    model.addAttribute("rootBalls", RootBall.scores());
    return lots.page("container/shift", lot, model);
  }
}
