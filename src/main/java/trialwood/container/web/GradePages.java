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
import trialwood.container.NewGrade;
import trialwood.container.RootBall;
import trialwood.container.Tending;
import trialwood.container.web.LotBook.Happened;
import trialwood.container.web.LotBook.Head;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.Questions;

/** Grading a lot: its plants by what can be sold, and its root balls. */
@Controller
class GradePages {

  private final LotForms lots;
  private final Tending tending;
  private final Forms forms;
  private final Choices choices;

  GradePages(LotForms lots, Tending tending, Forms forms, Choices choices) {
    this.lots = lots;
    this.tending = tending;
    this.forms = forms;
    this.choices = choices;
  }

  record GradeForm(
      @Nullable UUID formKey,
      @Nullable String a,
      @Nullable String b,
      @Nullable String c,
      @Nullable Integer rootBall,
      @Nullable String on,
      @Nullable UUID by,
      @Nullable String asked,
      @Nullable String checked,
      @Nullable String supersedeReason)
      implements Form {

    static GradeForm of(Happened earlier) {
      return new GradeForm(
          UUID.randomUUID(),
          Objects.toString(earlier.saleable(), ""),
          Objects.toString(earlier.gradeB(), ""),
          Objects.toString(earlier.gradeC(), ""),
          earlier.rootBall(),
          earlier.onDate().toString(),
          earlier.personId(),
          "",
          "",
          "");
    }

    NewGrade read(Boxes boxes) {
      return new NewGrade(
          boxes.date("on", on),
          boxes.countIfAny("a", a),
          boxes.countIfAny("b", b),
          boxes.countIfAny("c", c),
          rootBall,
          by);
    }
  }

  @GetMapping("/containers/{label}/grade")
  @ForBench
  String open(@PathVariable String label, Model model) {
    String today = choices.todayTyped();
    model.addAttribute(
        "form", new GradeForm(UUID.randomUUID(), "", "", "", null, today, null, "", "", ""));
    return page(lots.lot(label), null, model);
  }

  @GetMapping("/containers/{label}/grade/{id}")
  @ForBench
  String openAgain(@PathVariable String label, @PathVariable UUID id, Model model) {
    Head lot = lots.lot(label);
    Happened earlier = lots.earlier(lot, "grade", id);
    model.addAttribute("form", GradeForm.of(earlier));
    return page(lot, earlier, model);
  }

  @PostMapping({"/containers/{label}/grade", "/containers/{label}/grade/{id}"})
  @ForBench
  String store(
      @PathVariable String label,
      @PathVariable(required = false) @Nullable UUID id,
      @ModelAttribute("form") @Nullable GradeForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lots.lot(label);
    Happened earlier = id == null ? null : lots.earlier(lot, "grade", id);
    if (form == null) {
      throw Boxes.unreadable();
    }
    NewGrade grade = form.read(new Boxes(said, choices.today()));
    Questions questions = new Questions(form.asked(), form.checked());
    boolean stored =
        forms.store(
            form,
            said,
            () -> {
              questions.ask(Tending.questions(grade));
              if (id == null) {
                tending.grade(lot.lotId(), grade, questions.orAsk());
              } else {
                String reason = Boxes.text(form.supersedeReason());
                tending.correctGrade(id, grade, reason, questions.orAsk());
              }
            });
    return stored
        ? LotForms.backTo(lot.label(), "Grading of %s stored.".formatted(lot.label()), next)
        : page(lot, earlier, model);
  }

  private String page(Head lot, @Nullable Happened earlier, Model model) {
    model.addAttribute("rootBalls", RootBall.scores());
    return lots.page("container/grade", lot, earlier, model);
  }
}
