package trialwood.label.web;

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
import trialwood.label.LabelFormat;
import trialwood.label.LabelFormats;
import trialwood.label.Printers;
import trialwood.record.History;
import trialwood.record.Refused;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The label papers, and how labels lie on one. */
@Controller
class FormatPages {

  private final LabelFormats formats;
  private final Printers printers;
  private final History history;
  private final Forms forms;

  FormatPages(LabelFormats formats, Printers printers, History history, Forms forms) {
    this.formats = formats;
    this.printers = printers;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/labels")
  @ForStaff
  String list(Model page) {
    page.addAttribute("formats", formats.findAllByOrderByName());
    page.addAttribute("printers", printers.findAllByOrderByName());
    return "label/paper";
  }

  @GetMapping("/ground/labels/{name}")
  @ForStaff
  String show(@PathVariable String name, Model page) {
    LabelFormat format = format(name);
    page.addAttribute("format", format);
    page.addAttribute("words", FormatForm.of(format).words());
    page.addAttribute(
        "changes",
        Change.of(
            history.of(LabelFormat.class, Objects.requireNonNull(format.id())),
            then -> FormatForm.of(then).words()));
    return "label/format";
  }

  @GetMapping("/ground/new-labels")
  @ForKeeper
  String fresh(Model page) {
    page.addAttribute("form", FormatForm.fresh());
    return "label/edit-format";
  }

  @PostMapping("/ground/new-labels")
  @ForKeeper
  String add(
      @ModelAttribute("form") @Nullable FormatForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> add(Objects.requireNonNull(form)))) {
      return "label/edit-format";
    }
    next.addFlashAttribute("status", "The format is on the list.");
    return "redirect:/ground/labels";
  }

  private void add(FormatForm form) {
    LabelFormat made = form.made();
    if (formats.findByName(made.name()).isPresent()) {
      throw new Refused("name", "There is a format %s already.".formatted(made.name()));
    }
    formats.save(made);
  }

  @GetMapping("/ground/labels/{name}/edit")
  @ForKeeper
  String edit(@PathVariable String name, Model page) {
    FormatForm form = FormatForm.of(format(name));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "label/edit-format";
  }

  @PostMapping("/ground/labels/{name}/edit")
  @ForKeeper
  String change(
      @PathVariable String name,
      @ModelAttribute("form") @Nullable FormatForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    format(name);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(format(name)))) {
      EditForm.showBoth(form, FormatForm.of(format(name)), said, page);
      return "label/edit-format";
    }
    next.addFlashAttribute("status", "The format " + name + " is changed.");
    return "redirect:/ground/labels/{name}";
  }

  private LabelFormat format(String name) {
    return formats.findByName(name).orElseThrow(NotFound.of("such label format"));
  }
}
