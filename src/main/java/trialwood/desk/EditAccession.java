package trialwood.desk;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.lineage.Accession;
import trialwood.lineage.Accessions;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** Changes what is said of an accession. */
@Controller
@ForKeeper
@RequestMapping("/accessions/{code}/edit")
class EditAccession {

  private final Accessions accessions;
  private final Forms forms;

  EditAccession(Accessions accessions, Forms forms) {
    this.accessions = accessions;
    this.forms = forms;
  }

  @GetMapping
  String edit(@PathVariable String code, Model page) {
    AccessionForm form = AccessionForm.of(accession(code));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "desk/edit-accession";
  }

  @PostMapping
  String change(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable AccessionForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    String name = accession(code).code();
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(accession(code)))) {
      EditForm.showBoth(form, AccessionForm.of(accession(code)), said, page);
      return "desk/edit-accession";
    }
    next.addFlashAttribute("status", "What is said of " + name + " is changed.");
    return "redirect:/accessions/{code}";
  }

  private Accession accession(String code) {
    return accessions.named(code).orElseThrow(NotFound.of("accession " + code));
  }
}
