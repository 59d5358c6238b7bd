package trialwood.desk;

import jakarta.validation.Valid;
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
import trialwood.record.Recorder;
import trialwood.unit.Doubt;
import trialwood.unit.Doubts;
import trialwood.unit.Unit;
import trialwood.unit.Units;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Answers the question that two contradicting records raised; both stay as they are. */
@Controller
class DoubtPage {

  private final Doubts doubts;
  private final Units units;
  private final Recorder recorder;
  private final Forms forms;

  DoubtPage(Doubts doubts, Units units, Recorder recorder, Forms forms) {
    this.doubts = doubts;
    this.units = units;
    this.recorder = recorder;
    this.forms = forms;
  }

  record Answer(@Nullable UUID formKey, @Nullable String answer) implements Form {}

  @GetMapping("/doubts/{id}")
  @ForBench
  String doubt(@PathVariable UUID id, Model model) {
    model.addAttribute("form", new Answer(UUID.randomUUID(), ""));
    return page(id, model);
  }

  @PostMapping("/doubts/{id}")
  @ForBench
  String answer(
      @PathVariable UUID id,
      @Valid @ModelAttribute("form") @Nullable Answer form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> answer(id, Objects.requireNonNull(form)))) {
      return page(id, model);
    }
    next.addFlashAttribute("status", "Answered; both records stay as they are.");
    return "redirect:/";
  }

  private void answer(UUID id, Answer form) {
    Entry entry = new Entry();
    String words = entry.words("answer", form.answer(), "Write what you found out.");
    entry.orRefuse();
    doubts.save(answered(doubt(id), words));
  }

  private Doubt answered(Doubt doubt, String words) {
    doubt.answer(words, recorder.by(null));
    return doubt;
  }

  private String page(UUID id, Model model) {
    Doubt doubt = doubt(id);
    Unit unit = units.findById(doubt.unitId()).orElseThrow();
    model.addAttribute("doubt", doubt);
    model.addAttribute("unit", unit);
    model.addAttribute("other", label(doubt.otherUnitId()));
    return "desk/doubt";
  }

  private @Nullable String label(@Nullable UUID unit) {
    return unit == null ? null : units.findById(unit).map(Unit::label).orElse(null);
  }

  private Doubt doubt(UUID id) {
    return doubts.findById(id).orElseThrow(NotFound.of("such question"));
  }
}
