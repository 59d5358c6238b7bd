package trialwood.container.web;

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
import trialwood.container.CareKind;
import trialwood.container.NewCare;
import trialwood.container.Tending;
import trialwood.container.web.LotBook.Happened;
import trialwood.container.web.LotBook.Head;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Questions;

/** A lot's winter: when it was covered and where, when uncovered and what the winter did. */
@Controller
class WinterPages {

  private final LotForms lots;
  private final Tending tending;
  private final Forms forms;
  private final Choices choices;

  WinterPages(LotForms lots, Tending tending, Forms forms, Choices choices) {
    this.lots = lots;
    this.tending = tending;
    this.forms = forms;
    this.choices = choices;
  }

  record WinterForm(
      @Nullable UUID formKey,
      @Nullable CareKind kind,
      @Nullable String on,
      @Nullable String house,
      @Nullable String lowestCelsius,
      @Nullable String diebackPercent,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked,
      @Nullable String supersedeReason)
      implements Form {

    static WinterForm of(Happened earlier) {
      return new WinterForm(
          UUID.randomUUID(),
          CareKind.valueOf(earlier.what()),
          earlier.onDate().toString(),
          earlier.words(),
          Objects.toString(earlier.lowestCelsius(), ""),
          Objects.toString(earlier.diebackPercent(), ""),
          earlier.personId(),
          "",
          "",
          "");
    }

    NewCare read(Boxes boxes) {
      if (kind == null || kind.isCut()) {
        boxes.wrong("kind", "Say whether it was covered or uncovered.");
      }
      return new NewCare(
          boxes.date("on", on),
          Objects.requireNonNullElse(kind, CareKind.COVERED),
          null,
          Boxes.words(house),
          boxes.decimalIfAny("lowestCelsius", lowestCelsius),
          boxes.countIfAny("diebackPercent", diebackPercent),
          by);
    }
  }

  @GetMapping("/containers/{label}/winter")
  @ForBench
  String open(@PathVariable String label, Model model) {
    boolean spring = choices.today().getMonthValue() < 8;
    model.addAttribute(
        "form",
        new WinterForm(
            UUID.randomUUID(),
            spring ? CareKind.UNCOVERED : CareKind.COVERED,
            choices.todayTyped(),
            "",
            "",
            "",
            null,
            "",
            "",
            ""));
    return lots.page("container/winter", lots.lot(label), model);
  }

  @GetMapping("/containers/{label}/winter/{id}")
  @ForBench
  String openAgain(@PathVariable String label, @PathVariable UUID id, Model model) {
    Head lot = lots.lot(label);
    Happened earlier = lots.earlier(lot, "winter", id);
    model.addAttribute("form", WinterForm.of(earlier));
    return lots.page("container/winter", lot, earlier, model);
  }

  @PostMapping({"/containers/{label}/winter", "/containers/{label}/winter/{id}"})
  @ForBench
  String store(
      @PathVariable String label,
      @PathVariable(required = false) @Nullable UUID id,
      @ModelAttribute("form") @Nullable WinterForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    Happened earlier = id == null ? null : lots.earlier(lot, "winter", id);
    if (form == null) {
      throw Boxes.unreadable();
    }
    NewCare care = form.read(new Boxes(said, choices.today()));
    Questions questions = new Questions(form.asked(), form.checked());
    boolean stored =
        forms.store(
            form,
            said,
            () -> {
              questions.ask(tending.questions(lot.lotId(), care));
              lots.keep(lot, care, id, form.supersedeReason(), questions.orAsk());
            });
    return stored
        ? LotForms.backTo(lot.label(), "%s %s.".formatted(lot.label(), care.kind().word()), next)
        : lots.page("container/winter", lot, earlier, model);
  }
}
