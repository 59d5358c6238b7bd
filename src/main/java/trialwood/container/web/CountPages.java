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
import trialwood.container.Lots;
import trialwood.container.NewCount;
import trialwood.container.NewLoss;
import trialwood.container.NewOutgoing;
import trialwood.container.Way;
import trialwood.container.web.LotBook.Head;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Counting a lot with what was found dead, and letting plants go. */
@Controller
class CountPages {

  private final LotBook book;
  private final Lots lots;
  private final LotRecords records;
  private final Forms forms;
  private final Choices choices;

  CountPages(LotBook book, Lots lots, LotRecords records, Forms forms, Choices choices) {
    this.book = book;
    this.lots = lots;
    this.records = records;
    this.forms = forms;
    this.choices = choices;
  }

  /**
   * @param number found dead
   * @param reason what they died of
   */
  record CountForm(
      @Nullable UUID formKey,
      @Nullable String alive,
      @Nullable String saleable,
      @Nullable String number,
      @Nullable String reason,
      @Nullable String on,
      @Nullable String note,
      @Nullable UUID by)
      implements Form {}

  record OutForm(
      @Nullable UUID formKey,
      @Nullable Way way,
      @Nullable String number,
      @Nullable String on,
      @Nullable String toWhom,
      @Nullable String agreement,
      @Nullable String purpose,
      @Nullable UUID by)
      implements Form {}

  @GetMapping("/containers/{label}/count")
  @ForBench
  String openCount(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute("form", new CountForm(UUID.randomUUID(), "", "", "", "", today, "", null));
    return page("container/count", lot(label), model);
  }

  @PostMapping("/containers/{label}/count")
  @ForBench
  String count(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable CountForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    NewCount count =
        new NewCount(
            boxes.date("on", form.on()),
            boxes.count("alive", form.alive(), "Write how many are alive; 0 for none."),
            boxes.countIfAny("saleable", form.saleable()),
            Boxes.words(form.note()),
            form.by());
    int dead = Objects.requireNonNullElse(boxes.countIfAny("number", form.number()), 0);
    NewLoss loss = new NewLoss(count.on(), dead, Boxes.text(form.reason()), form.by());
    boolean stored =
        forms.store(
            form,
            said,
            () -> {
              if (dead > 0) {
                records.lose(lot.lotId(), loss);
              }
              records.count(lot.lotId(), count);
            });
    if (!stored) {
      return page("container/count", lot, model);
    }
    next.addFlashAttribute("status", "%d alive in %s.".formatted(count.alive(), lot.label()));
    next.addAttribute("label", lot.label());
    return "redirect:/containers/{label}";
  }

  @GetMapping("/containers/{label}/out")
  @ForBench
  String openOut(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute("form", new OutForm(UUID.randomUUID(), null, "", today, "", "", "", null));
    return page("container/out", lot(label), model);
  }

  @PostMapping("/containers/{label}/out")
  @ForBench
  String letGo(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable OutForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    if (form.way() == null || form.way() == Way.SHIFTED) {
      boxes.wrong("way", "Say whether they were destroyed or went to somebody.");
    }
    NewOutgoing out =
        new NewOutgoing(
            boxes.date("on", form.on()),
            boxes.count("number", form.number(), "Write how many left, such as 8."),
            Objects.requireNonNullElse(form.way(), Way.DISPOSED),
            Boxes.words(form.toWhom()),
            Boxes.words(form.agreement()),
            Boxes.words(form.purpose()),
            form.by());
    if (!forms.store(form, said, () -> records.letGo(lot.lotId(), out))) {
      return page("container/out", lot, model);
    }
    next.addFlashAttribute("status", "%d %s.".formatted(out.number(), out.way().word()));
    next.addAttribute("label", lot.label());
    return "redirect:/containers/{label}";
  }

  private Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  private String page(String template, Head lot, Model model) {
    model.addAttribute("lot", lot);
    model.addAttribute("ledger", lots.ledger(lot.lotId(), choices.today()));
    model.addAttribute("people", choices.people());
    return template;
  }
}
