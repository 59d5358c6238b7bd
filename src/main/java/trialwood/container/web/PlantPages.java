package trialwood.container.web;

import java.util.Objects;
import java.util.Optional;
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
import trialwood.container.Measuring;
import trialwood.container.web.LotBook.Head;
import trialwood.container.web.PlantBook.Noted;
import trialwood.observation.Observation;
import trialwood.observation.Observations;
import trialwood.observation.Reading;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.ForStaff;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** A numbered plant: everything seen on it, and the way to put a value right. */
@Controller
class PlantPages {

  private final LotBook book;
  private final PlantBook plants;
  private final Units units;
  private final Observations observations;
  private final Measuring measuring;
  private final Forms forms;
  private final Choices choices;

  PlantPages(
      LotBook book,
      PlantBook plants,
      Units units,
      Observations observations,
      Measuring measuring,
      Forms forms,
      Choices choices) {
    this.book = book;
    this.plants = plants;
    this.units = units;
    this.observations = observations;
    this.measuring = measuring;
    this.forms = forms;
    this.choices = choices;
  }

  record ValueForm(
      @Nullable UUID formKey,
      @Nullable String value,
      @Nullable String supersedeReason,
      @Nullable String by)
      implements Form {

    void correct(Measuring measuring, Observation earlier) {
      Entry entry = new Entry();
      Optional<Reading> reading = SheetReading.reading(Boxes.text(value));
      if (reading.isEmpty()) {
        entry.wrong("value", SheetReading.noNumber(Boxes.text(value)));
      }
      String reason =
          entry.words("supersedeReason", supersedeReason, "Say why the value is replaced.");
      UUID person = entry.person("by", by);
      entry.orRefuse();
      measuring.correct(earlier, reading.orElseThrow(), reason, person);
    }
  }

  @GetMapping("/containers/{label}/plants/{plant}")
  @ForStaff
  String plant(@PathVariable String label, @PathVariable String plant, Model model) {
    Unit unit = unit(plant);
    model.addAttribute("lot", lot(label));
    model.addAttribute("plant", unit);
    model.addAttribute("noted", plants.noted(Objects.requireNonNull(unit.id())));
    return "container/plant";
  }

  @GetMapping("/containers/{label}/plants/{plant}/values/{id}")
  @ForBench
  String open(
      @PathVariable String label, @PathVariable String plant, @PathVariable UUID id, Model model) {
    Unit unit = unit(plant);
    Observation earlier = earlier(unit, id);
    model.addAttribute(
        "form",
        new ValueForm(
            UUID.randomUUID(), "", "", Objects.toString(earlier.recorded().personId(), null)));
    return page(lot(label), unit, id, model);
  }

  @PostMapping("/containers/{label}/plants/{plant}/values/{id}")
  @ForBench
  String correct(
      @PathVariable String label,
      @PathVariable String plant,
      @PathVariable UUID id,
      @ModelAttribute("form") @Nullable ValueForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    Unit unit = unit(plant);
    Observation earlier = earlier(unit, id);
    if (!forms.store(form, said, () -> Objects.requireNonNull(form).correct(measuring, earlier))) {
      return page(lot, unit, id, model);
    }
    next.addFlashAttribute("status", "Corrected. The earlier value stays readable.");
    next.addAttribute("label", lot.label());
    next.addAttribute("plant", unit.label());
    return "redirect:/containers/{label}/plants/{plant}";
  }

  private Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  private Unit unit(String plant) {
    return units
        .labelled(plant)
        .filter(unit -> unit.kind() == UnitKind.PLANT)
        .orElseThrow(NotFound.of("plant " + plant));
  }

  /** The value that is to be corrected: one that can be typed as a number or a reason. */
  private Observation earlier(Unit unit, UUID id) {
    return observations
        .findById(id)
        .filter(value -> value.unitId().equals(unit.id()))
        .filter(value -> value.reading().text() == null && value.reading().day() == null)
        .orElseThrow(NotFound.of("such value"));
  }

  private String page(Head lot, Unit unit, UUID id, Model model) {
    Noted earlier =
        plants.noted(Objects.requireNonNull(unit.id())).stream()
            .filter(it -> it.id().equals(id))
            .findFirst()
            .orElseThrow();
    model.addAttribute("lot", lot);
    model.addAttribute("plant", unit);
    model.addAttribute("earlier", earlier);
    model.addAttribute("people", choices.people());
    return "container/correct-value";
  }
}
