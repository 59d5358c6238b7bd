package trialwood.field.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
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
import trialwood.analysis.PlantingDensity;
import trialwood.field.FieldLists;
import trialwood.field.Population;
import trialwood.field.Populations;
import trialwood.field.Tagging;
import trialwood.lineage.Accessions;
import trialwood.people.Persons;
import trialwood.web.ForBreeder;
import trialwood.web.ForStaff;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** The field: populations, their tags, and hanging a new one. */
@Controller
class FieldPages {

  private final Populations populations;
  private final FieldLists field;
  private final Tagging tagging;
  private final Accessions accessions;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  FieldPages(
      Populations populations,
      FieldLists field,
      Tagging tagging,
      Accessions accessions,
      Persons persons,
      Forms forms,
      Clock clock) {
    this.populations = populations;
    this.field = field;
    this.tagging = tagging;
    this.accessions = accessions;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  @GetMapping("/field")
  @ForStaff
  @Place(key = "field", label = "Field", order = 20)
  String field(Model model) {
    model.addAttribute("populations", populations.findAllByOrderByPlantedOnDesc());
    return "field/field";
  }

  @GetMapping("/field/{code}")
  @ForStaff
  String population(@PathVariable String code, Model model) {
    Population population = population(code);
    int positions = population.rowCount() * population.positionsPerRow();
    PlantingDensity density =
        PlantingDensity.metres(population.inRowMm() / 1000.0, population.betweenRowsMm() / 1000.0);
    model.addAttribute("population", population);
    model.addAttribute("positions", positions);
    model.addAttribute("hectares", density.hectaresFor(positions));
    model.addAttribute("acres", density.acresFor(positions));
    model.addAttribute("tags", field.tagsOf(Objects.requireNonNull(population.id())));
    return "field/population";
  }

  @GetMapping("/field/{code}/tags/new")
  @ForBreeder
  String tag(@PathVariable String code, Model model) {
    model.addAttribute("form", TagForm.fresh(LocalDate.now(clock)));
    return tagPage(population(code), model);
  }

  @PostMapping("/field/{code}/tags/new")
  @ForBreeder
  String tag(
      @PathVariable String code,
      @Valid @ModelAttribute("form") @Nullable TagForm form,
      BindingResult said,
      Model model,
      RedirectAttributes next) {
    Population population = population(code);
    if (!forms.store(
        form,
        said,
        () ->
            tagging.hang(
                population,
                Objects.requireNonNull(form)
                    .read(
                        LocalDate.now(clock),
                        accessions.named(Objects.requireNonNullElse(form.seedParent(), "")))))) {
      return tagPage(population, model);
    }
    next.addFlashAttribute("status", "The tag hangs; the plant is a candidate.");
    next.addAttribute(
        "candidate", Objects.requireNonNull(Objects.requireNonNull(form).accession()).strip());
    return "redirect:/candidates/{candidate}";
  }

  private Population population(String code) {
    return populations.findByCode(code).orElseThrow(NotFound.of("population " + code));
  }

  private String tagPage(Population population, Model model) {
    model.addAttribute("population", population);
    model.addAttribute("people", persons.findByActiveTrueOrderByInitials());
    return "field/new-tag";
  }
}
