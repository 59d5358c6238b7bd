package trialwood.container.web;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
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
import trialwood.container.LotRecords;
import trialwood.container.NewCount;
import trialwood.container.NewLoss;
import trialwood.container.web.LotBook.Head;
import trialwood.record.Checked;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Questions;

/** Counting a lot; what is missing is closed in the same form, by what they died of. */
@Controller
class CountPages {

  private static final int LOSSES = 2;

  private final LotForms lots;
  private final LotRecords records;
  private final Forms forms;
  private final Choices choices;

  CountPages(LotForms lots, LotRecords records, Forms forms, Choices choices) {
    this.lots = lots;
    this.records = records;
    this.forms = forms;
    this.choices = choices;
  }

  /**
   * @param number found dead
   * @param reason what they died of
   */
  record LossRow(@Nullable String number, @Nullable String reason) {}

  record CountForm(
      @Nullable UUID formKey,
      @Nullable String alive,
      @Nullable String saleable,
      @Nullable List<LossRow> rows,
      @Nullable String on,
      @Nullable String note,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked)
      implements Form {

    NewCount count(Boxes boxes) {
      return new NewCount(
          boxes.date("on", on),
          boxes.count("alive", alive, "Write how many are alive; 0 for none."),
          boxes.countIfAny("saleable", saleable),
          Boxes.words(note),
          by);
    }

    List<NewLoss> losses(Boxes boxes, LocalDate day) {
      List<NewLoss> losses = new ArrayList<>();
      List<LossRow> typed = Objects.requireNonNullElse(rows, List.of());
      for (int at = 0; at < typed.size(); at++) {
        String box = "rows[%d]".formatted(at);
        Integer number = boxes.countIfAny(box + ".number", typed.get(at).number());
        String reason = Boxes.text(typed.get(at).reason());
        if (number != null && number > 0 && reason.isEmpty()) {
          boxes.wrong(box + ".reason", "Say what they died of, as far as you can see.");
        } else if (number == null && !reason.isEmpty()) {
          boxes.wrong(box + ".number", "Write how many died of it.");
        }
        if (number != null && number > 0) {
          losses.add(new NewLoss(day, number, reason, by));
        }
      }
      return losses;
    }
  }

  @GetMapping("/containers/{label}/count")
  @ForBench
  String open(@PathVariable String label, Model model) {
    List<LossRow> none = Collections.nCopies(LOSSES, new LossRow("", ""));
    String today = choices.todayTyped();
    model.addAttribute(
        "form", new CountForm(UUID.randomUUID(), "", "", none, today, "", null, "", ""));
    return lots.page("container/count", lots.lot(label), model);
  }

  @PostMapping("/containers/{label}/count")
  @ForBench
  String count(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable CountForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    Boxes boxes = new Boxes(said, choices.today());
    NewCount count = form.count(boxes);
    List<NewLoss> losses = form.losses(boxes, count.on());
    boolean stored = forms.store(form, said, () -> keep(lot.lotId(), count, losses, form));
    return stored
        ? LotForms.backTo(
            lot.label(), "%d alive in %s.".formatted(count.alive(), lot.label()), next)
        : lots.page("container/count", lot, model);
  }

  private void keep(UUID lot, NewCount count, List<NewLoss> losses, CountForm form) {
    int dead = losses.stream().mapToInt(NewLoss::number).sum();
    Questions questions = new Questions(form.asked(), form.checked());
    questions.ask(records.questions(lot, count, dead));
    Checked checked = questions.orAsk();
    losses.forEach(loss -> records.lose(lot, loss));
    records.count(lot, count, checked);
  }
}
