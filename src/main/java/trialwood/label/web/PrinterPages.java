package trialwood.label.web;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.label.LabelFormats;
import trialwood.label.LabelPaper;
import trialwood.label.Printer;
import trialwood.label.Printers;
import trialwood.record.History;
import trialwood.record.Refused;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The printers, and the page that is printed to measure one. */
@Controller
class PrinterPages {

  private final Printers printers;
  private final LabelFormats formats;
  private final History history;
  private final Forms forms;

  PrinterPages(Printers printers, LabelFormats formats, History history, Forms forms) {
    this.printers = printers;
    this.formats = formats;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/printers/{name}")
  @ForStaff
  String show(@PathVariable String name, Model page) {
    Printer printer = printer(name);
    page.addAttribute("printer", printer);
    page.addAttribute("formats", formats.findAllByOrderByName());
    page.addAttribute("words", PrinterForm.of(printer).words());
    page.addAttribute(
        "changes",
        Change.of(
            history.of(Printer.class, Objects.requireNonNull(printer.id())),
            then -> PrinterForm.of(then).words()));
    return "label/printer";
  }

  /** A sheet to measure, of the paper that is named or of the first. */
  @GetMapping("/ground/printers/{name}/test")
  @ForStaff
  ResponseEntity<byte[]> test(
      @PathVariable String name, @RequestParam(defaultValue = "") String format) {
    Printer printer = printer(name);
    return formats
        .findByName(format)
        .or(() -> formats.findAllByOrderByName().stream().findFirst())
        .map(paper -> new LabelPaper(paper.layout(), printer).test())
        .map(pdf -> ResponseEntity.ok().contentType(MediaType.APPLICATION_PDF).body(pdf))
        .orElseThrow(NotFound.of("such label format"));
  }

  @GetMapping("/ground/new-printer")
  @ForKeeper
  String fresh(Model page) {
    page.addAttribute("form", PrinterForm.fresh());
    return "label/edit-printer";
  }

  @PostMapping("/ground/new-printer")
  @ForKeeper
  String add(
      @ModelAttribute("form") @Nullable PrinterForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> add(Objects.requireNonNull(form)))) {
      return "label/edit-printer";
    }
    next.addFlashAttribute("status", "The printer is on the list. Print its test page.");
    return "redirect:/ground/labels";
  }

  private void add(PrinterForm form) {
    Printer made = form.made();
    if (printers.findByName(made.name()).isPresent()) {
      throw new Refused("name", "There is a printer %s already.".formatted(made.name()));
    }
    printers.save(made);
  }

  @GetMapping("/ground/printers/{name}/edit")
  @ForKeeper
  String edit(@PathVariable String name, Model page) {
    PrinterForm form = PrinterForm.of(printer(name));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "label/edit-printer";
  }

  @PostMapping("/ground/printers/{name}/edit")
  @ForKeeper
  String change(
      @PathVariable String name,
      @ModelAttribute("form") @Nullable PrinterForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    printer(name);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(printer(name)))) {
      EditForm.showBoth(form, PrinterForm.of(printer(name)), said, page);
      return "label/edit-printer";
    }
    next.addFlashAttribute("status", "Stored. Print the test page once more.");
    return "redirect:/ground/printers/{name}";
  }

  private Printer printer(String name) {
    return printers.findByName(name).orElseThrow(NotFound.of("such printer"));
  }
}
