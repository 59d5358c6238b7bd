package trialwood.ground;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.crop.Better;
import trialwood.crop.Crop;
import trialwood.crop.Crops;
import trialwood.crop.Trait;
import trialwood.crop.TraitKind;
import trialwood.crop.TraitSteps;
import trialwood.crop.Traits;
import trialwood.record.History;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.ListQuery;
import trialwood.web.NotFound;

/** The traits, and what is said of one. */
@Controller
class TraitPages {

  private final Crops crops;
  private final Traits traits;
  private final TraitSteps steps;
  private final TraitList list;
  private final History history;
  private final Forms forms;

  TraitPages(
      Crops crops, Traits traits, TraitSteps steps, TraitList list, History history, Forms forms) {
    this.crops = crops;
    this.traits = traits;
    this.steps = steps;
    this.list = list;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/ground/traits")
  @ForStaff
  String list(@RequestParam Map<String, String> parameters, Model page) {
    ListQuery query = ListQuery.of(parameters, "crop", "kind");
    page.addAttribute("query", query);
    page.addAttribute("rows", list.page(query));
    page.addAttribute("total", list.count(query));
    page.addAttribute("crops", cropNames());
    page.addAttribute("kinds", kinds());
    return "ground/traits";
  }

  @GetMapping("/ground/traits/{crop}/{code}")
  @ForStaff
  String show(@PathVariable String crop, @PathVariable String code, Model page) {
    Trait trait = trait(crop, code);
    UUID id = Objects.requireNonNull(trait.id());
    page.addAttribute("crop", crop);
    page.addAttribute("trait", trait);
    page.addAttribute("words", TraitForm.of(trait).words());
    page.addAttribute("steps", steps.findByTraitIdInOrderByTraitIdAscScaleAscStepAsc(List.of(id)));
    page.addAttribute(
        "changes", Change.of(history.of(Trait.class, id), then -> TraitForm.of(then).words()));
    return "ground/trait";
  }

  @GetMapping("/ground/traits/{crop}/{code}/edit")
  @ForKeeper
  String edit(@PathVariable String crop, @PathVariable String code, Model page) {
    TraitForm form = TraitForm.of(trait(crop, code));
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return offered(page);
  }

  @PostMapping("/ground/traits/{crop}/{code}/edit")
  @ForKeeper
  String change(
      @PathVariable String crop,
      @PathVariable String code,
      @ModelAttribute("form") @Nullable TraitForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    trait(crop, code);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).change(trait(crop, code)))) {
      EditForm.showBoth(form, TraitForm.of(trait(crop, code)), said, page);
      return offered(page);
    }
    next.addFlashAttribute("status", "What is said of " + code + " is changed.");
    return "redirect:/ground/traits/{crop}/{code}";
  }

  private static String offered(Model page) {
    Map<Better, String> ways = new LinkedHashMap<>();
    for (Better way : Better.values()) {
      ways.put(way, Boxes.word(way));
    }
    page.addAttribute("ways", ways);
    page.addAttribute("unitKinds", TraitForm.UNIT_KINDS);
    return "ground/edit-trait";
  }

  private Trait trait(String crop, String code) {
    return crops
        .findByCode(crop)
        .map(Crop::id)
        .flatMap(id -> traits.findByCropIdAndCode(id, code))
        .orElseThrow(NotFound.of("such trait"));
  }

  private Map<String, String> cropNames() {
    Map<String, String> names = new LinkedHashMap<>();
    crops.findAll(Sort.by("code")).forEach(crop -> names.put(crop.code(), crop.commonName()));
    return names;
  }

  private static Map<String, String> kinds() {
    Map<String, String> words = new LinkedHashMap<>();
    for (TraitKind kind : TraitKind.values()) {
      words.put(kind.name(), kind.word());
    }
    return words;
  }
}
