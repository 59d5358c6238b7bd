package trialwood.container.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.container.Measuring;
import trialwood.container.PlantValues;
import trialwood.container.web.LotBook.Head;
import trialwood.container.web.PlantBook.Standing;
import trialwood.container.web.SheetForm.Line;
import trialwood.crop.Trait;
import trialwood.crop.Traits;
import trialwood.record.Problem;
import trialwood.web.ForBench;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/**
 * The measuring sheet of a lot: plants down, traits across. Good lines are stored at once; the page
 * comes back with the others, as they were typed.
 */
@Controller
class MeasurePages {

  private static final int MOST_LINES = 200;

  private final LotBook book;
  private final PlantBook plants;
  private final Measuring measuring;
  private final Traits traits;
  private final Forms forms;
  private final Choices choices;

  MeasurePages(
      LotBook book,
      PlantBook plants,
      Measuring measuring,
      Traits traits,
      Forms forms,
      Choices choices) {
    this.book = book;
    this.plants = plants;
    this.measuring = measuring;
    this.traits = traits;
    this.forms = forms;
    this.choices = choices;
  }

  @GetMapping("/containers/{label}/measure")
  @ForBench
  String open(
      @PathVariable String label,
      @RequestParam(name = "trait", required = false) @Nullable List<String> picked,
      Model model) {
    Head lot = lot(label);
    List<Trait> columns = columns(lot, picked);
    List<Line> lines =
        plants.plants(lot.lotId(), choices.today()).stream()
            .limit(MOST_LINES)
            .map(plant -> Line.empty(plant.plantId(), columns.size()))
            .toList();
    model.addAttribute(
        "form",
        new SheetForm(
            UUID.randomUUID(),
            choices.todayTyped(),
            null,
            columns.stream().map(Trait::code).toList(),
            lines));
    return page(lot, columns, model);
  }

  @PostMapping("/containers/{label}/measure")
  @ForBench
  String store(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable SheetForm form,
      BindingResult said,
      RedirectAttributes next,
      Model model) {
    Head lot = lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    List<Trait> columns = columns(lot, form.traits());
    LocalDate on = new Boxes(said, choices.today()).date("on", form.on());
    SheetReading sheet = SheetReading.of(form, columns, names(lot).keySet());
    List<PlantValues> good = sheet.good();
    Map<UUID, List<Problem>> wrong = new LinkedHashMap<>(sheet.wrong());
    if (!forms.storeLines(form, said, () -> wrong.putAll(measuring.keep(good, on, form.by())))) {
      return page(lot, columns, model);
    }
    long stored = good.stream().filter(line -> !wrong.containsKey(line.plantId())).count();
    String status = stored == 1 ? "1 plant stored." : "%d plants stored.".formatted(stored);
    if (wrong.isEmpty()) {
      next.addFlashAttribute("status", status);
      next.addAttribute("label", lot.label());
      return "redirect:/containers/{label}";
    }
    model.addAttribute("status", status + " The lines below are not stored yet.");
    again(form.keeping(wrong.keySet()), columns, wrong, model);
    return page(lot, columns, model);
  }

  /** The lines that were not stored, under a new key, with what is wrong beside their boxes. */
  private static void again(
      SheetForm left, List<Trait> columns, Map<UUID, List<Problem>> wrong, Model model) {
    BindingResult said = new BeanPropertyBindingResult(left, "form");
    List<String> codes = columns.stream().map(Trait::code).toList();
    List<Line> lines = left.lines();
    for (int row = 0; row < lines.size(); row++) {
      for (Problem problem : wrong.getOrDefault(lines.get(row).plant(), List.of())) {
        int column = Math.max(0, codes.indexOf(problem.field()));
        String box = "lines[%d].cells[%d]".formatted(row, column);
        said.rejectValue(box, "wrong", problem.sentence());
      }
    }
    model.addAttribute("form", left);
    model.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", said);
  }

  /** The traits asked for, or those that can be seen today, or else all that have numbers. */
  private List<Trait> columns(Head lot, @Nullable List<String> picked) {
    List<Trait> possible = possible(lot);
    if (picked != null && !picked.isEmpty()) {
      return possible.stream().filter(trait -> picked.contains(trait.code())).toList();
    }
    List<Trait> inSeason =
        possible.stream()
            .filter(trait -> trait.window() == null || trait.window().contains(choices.today()))
            .toList();
    return inSeason.isEmpty() ? possible : inSeason;
  }

  private List<Trait> possible(Head lot) {
    return traits.findByCropIdOrderByCode(lot.cropId()).stream()
        .filter(trait -> trait.kind().isNumber() && trait.takenOn().contains("plant"))
        .toList();
  }

  private Map<UUID, Standing> names(Head lot) {
    Map<UUID, Standing> names = new LinkedHashMap<>();
    plants.plants(lot.lotId(), choices.today()).forEach(it -> names.put(it.plantId(), it));
    return names;
  }

  private Head lot(String label) {
    return book.head(label).orElseThrow(NotFound.of("lot " + label));
  }

  private String page(Head lot, List<Trait> columns, Model model) {
    model.addAttribute("lot", lot);
    model.addAttribute("columns", columns);
    model.addAttribute("possible", possible(lot));
    model.addAttribute("plants", names(lot));
    model.addAttribute("people", choices.people());
    return "container/measure";
  }
}
