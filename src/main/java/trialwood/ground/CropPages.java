package trialwood.ground;

import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.data.domain.Sort;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.record.History;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The crops, and what is said of one. */
@Controller
class CropPages {

  private final Crops crops;
  private final CropCheckList checks;
  private final History history;
  private final Forms forms;

  CropPages(Crops crops, CropCheckList checks, History history, Forms forms) {
    this.crops = crops;
    this.checks = checks;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/crops")
  @ForStaff
  String list(Model page) {
    page.addAttribute("crops", crops.findAll(Sort.by("code")));
    return "ground/crops";
  }

  @GetMapping("/ground/crops/{code}")
  @ForStaff
  String show(@PathVariable String code, Model page) {
    Crop crop = crop(code);
    UUID id = Objects.requireNonNull(crop.id());
    page.addAttribute("crop", crop);
    page.addAttribute("words", CropForm.of(crop).words());
    page.addAttribute("checks", checks.of(id));
    page.addAttribute(
        "changes", Change.of(history.of(Crop.class, id), then -> CropForm.of(then).words()));
    return "ground/crop";
  }

  @GetMapping("/ground/crops/{code}/edit")
  @ForKeeper
  String edit(@PathVariable String code, Model page) {
    CropForm form = CropForm.of(crop(code));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return "ground/edit-crop";
  }

  @PostMapping("/ground/crops/{code}/edit")
  @ForKeeper
  String change(
      @PathVariable String code,
      @ModelAttribute("form") @Nullable CropForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    crop(code);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(crop(code)))) {
      EditForm.showBoth(form, CropForm.of(crop(code)), said, page);
      return "ground/edit-crop";
    }
    next.addFlashAttribute("status", "What is said of " + code + " is changed.");
    return "redirect:/ground/crops/{code}";
  }

  private Crop crop(String code) {
    return crops.findByCode(code).orElseThrow(NotFound.of("such crop"));
  }
}
