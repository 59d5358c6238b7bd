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
import trialwood.container.LotRecords;
import trialwood.container.NewOutgoing;
import trialwood.container.Way;
import trialwood.container.web.LotBook.Head;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;

/** Letting plants of a lot go: destroyed, or to somebody. */
@Controller
class OutPages {

  private final LotForms lots;
  private final LotRecords records;
  private final Forms forms;
  private final Choices choices;

  OutPages(LotForms lots, LotRecords records, Forms forms, Choices choices) {
    this.lots = lots;
    this.records = records;
    this.forms = forms;
    this.choices = choices;
  }

  record OutForm(
      @Nullable UUID formKey,
      @Nullable Way way,
      @Nullable String number,
      @Nullable String on,
      @Nullable String toWhom,
      @Nullable String agreement,
      @Nullable String purpose,
      @Nullable UUID by)
      implements Form {

    NewOutgoing read(Boxes boxes) {
      if (way == null || way == Way.SHIFTED) {
        boxes.wrong("way", "Say whether they were destroyed or went to somebody.");
      }
      return new NewOutgoing(
          boxes.date("on", on),
          boxes.count("number", number, "Write how many left, such as 8."),
          Objects.requireNonNullElse(way, Way.DISPOSED),
          Boxes.words(toWhom),
          Boxes.words(agreement),
          Boxes.words(purpose),
          by);
    }
  }

  @GetMapping("/containers/{label}/out")
  @ForBench
  String open(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute("form", new OutForm(UUID.randomUUID(), null, "", today, "", "", "", null));
    return lots.page("container/out", lots.lot(label), model);
  }

  @PostMapping("/containers/{label}/out")
  @ForBench
  String letGo(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable OutForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    NewOutgoing out = form.read(new Boxes(said, choices.today()));
    return forms.store(form, said, () -> records.letGo(lot.lotId(), out))
        ? LotForms.backTo(lot.label(), "%d %s.".formatted(out.number(), out.way().word()), next)
        : lots.page("container/out", lot, model);
  }
}
