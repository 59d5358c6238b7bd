package trialwood.ground;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.record.History;
import trialwood.site.Bench;
import trialwood.site.Benches;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The benches, and what is said of one. */
@Controller
class BenchesPages {

  private final Benches benches;
  private final History history;
  private final Forms forms;

  BenchesPages(Benches benches, History history, Forms forms) {
    this.benches = benches;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/benches")
  @ForStaff
  String list(Model page) {
    page.addAttribute("benches", benches.findAllByOrderByCode());
    return "ground/benches";
  }

  @GetMapping("/ground/benches/new")
  @ForKeeper
  String add(Model page) {
    page.addAttribute("form", BenchForm.fresh());
    return "ground/new-bench";
  }

  @PostMapping("/ground/benches/new")
  @ForKeeper
  String add(
      @ModelAttribute("form") @Nullable BenchForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).add(benches))) {
      return "ground/new-bench";
    }
    next.addFlashAttribute("status", "The bench is on record.");
    return "redirect:/ground/benches";
  }

  @GetMapping("/ground/benches/{code}")
  @ForStaff
  String show(@PathVariable String code, Model page) {
    Bench bench = bench(code);
    page.addAttribute("bench", bench);
    page.addAttribute("words", BenchForm.of(bench).words());
    page.addAttribute(
        "changes",
        Change.of(
            history.of(Bench.class, Objects.requireNonNull(bench.id())),
            then -> BenchForm.of(then).words()));
    return "ground/bench";
  }

  @GetMapping("/ground/benches/{code}/edit")
  @ForKeeper
  String edit(@PathVariable String code, Model page) {
    BenchForm form = BenchForm.of(bench(code));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "ground/edit-bench";
  }

  @PostMapping("/ground/benches/{code}/edit")
  @ForKeeper
  String change(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable BenchForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    bench(code);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(bench(code)))) {
      EditForm.showBoth(form, BenchForm.of(bench(code)), said, page);
      return "ground/edit-bench";
    }
    next.addFlashAttribute("status", "What is said of " + code + " is changed.");
    return "redirect:/ground/benches/{code}";
  }

  private Bench bench(String code) {
    return benches.findByCode(code).orElseThrow(NotFound.of("such bench"));
  }
}
