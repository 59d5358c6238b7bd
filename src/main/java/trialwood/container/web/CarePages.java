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

/** Pinching and pruning a lot. */
@Controller
class CarePages {

  private final LotForms lots;
  private final Tending tending;
  private final Forms forms;
  private final Choices choices;

  CarePages(LotForms lots, Tending tending, Forms forms, Choices choices) {
    this.lots = lots;
    this.tending = tending;
    this.forms = forms;
    this.choices = choices;
  }

  record CutForm(
      @Nullable UUID formKey,
      @Nullable CareKind kind,
      @Nullable String cutToCm,
      @Nullable String on,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked,
      @Nullable String supersedeReason)
      implements Form {

    static CutForm of(Happened earlier) {
      return new CutForm(
          UUID.randomUUID(),
          CareKind.valueOf(earlier.what()),
          Objects.toString(earlier.cutToCm(), ""),
          earlier.onDate().toString(),
          earlier.personId(),
          "",
          "",
          "");
    }
  }

  @GetMapping("/containers/{label}/cut")
  @ForBench
  String open(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute(
        "form", new CutForm(UUID.randomUUID(), CareKind.PINCHED, "", today, null, "", "", ""));
    return lots.page("container/cut", lots.lot(label), model);
  }

  @GetMapping("/containers/{label}/cut/{id}")
  @ForBench
  String openAgain(@PathVariable String label, @PathVariable UUID id, Model model) {
    Head lot = lots.lot(label);
    Happened earlier = lots.earlier(lot, "cut", id);
    model.addAttribute("form", CutForm.of(earlier));
    return lots.page("container/cut", lot, earlier, model);
  }

  @PostMapping({"/containers/{label}/cut", "/containers/{label}/cut/{id}"})
  @ForBench
  String store(
      @PathVariable String label,
      @PathVariable(required = false) @Nullable UUID id,
      @ModelAttribute("form") @Nullable CutForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    Happened earlier = id == null ? null : lots.earlier(lot, "cut", id);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    if (form.kind() == null || !form.kind().isCut()) {
      boxes.wrong("kind", "Say whether it was pinched or pruned.");
    }
    NewCare care =
        NewCare.cut(
            boxes.date("on", form.on()),
            form.kind() == null ? CareKind.PINCHED : form.kind(),
            boxes.decimalIfAny("cutToCm", form.cutToCm()),
            form.by());
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
        : lots.page("container/cut", lot, earlier, model);
  }
}
