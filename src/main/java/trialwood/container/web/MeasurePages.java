package trialwood.container.web;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import trialwood.web.Questions;

/**
 * The measuring sheet of a lot: plants down, traits across. Good lines are stored at once; the page
 * comes back with the others, as they were typed.
 */
@Controller
class MeasurePages {

  private static final int MOST_LINES = 200;

  private final LotForms lots;
  private final PlantBook plants;
  private final Measuring measuring;
  private final Traits traits;
  private final Forms forms;
  private final Choices choices;

  MeasurePages(
      LotForms lots,
      PlantBook plants,
      Measuring measuring,
      Traits traits,
      Forms forms,
      Choices choices) {
    this.lots = lots;
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
    Head lot = lots.lot(label);
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
            lines,
            "",
            "",
            ""));
    return page(lot, columns, model);
  }

  /** Puts a pasted block into the boxes and says what cannot be read; nothing is stored. */
  @PostMapping("/containers/{label}/measure/paste")
  @ForBench
  String paste(
      @PathVariable String label,
      @ModelAttribute("form") @Nullable SheetForm form,
      BindingResult bound,
      Model model) {
    Head lot = lots.lot(label);
    if (form == null || bound.hasErrors()) {
      throw Boxes.unreadable();
    }
    List<Trait> columns = columns(lot, form.traits());
    Map<UUID, Standing> plants = names(lot);
    List<Standing> standing = plants.values().stream().limit(MOST_LINES).toList();
    PastedBlock block = PastedBlock.of(Boxes.text(form.block()), columns, standing);
    SheetForm filled =
        new SheetForm(
            UUID.randomUUID(), form.on(), form.by(), form.traits(), block.lines(), "", "", "");
    again(filled, columns, SheetReading.of(filled, columns, plants.keySet()).wrong(), model);
    model.addAttribute("block", block);
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
    Head lot = lots.lot(label);
    if (form == null) {
      throw Boxes.unreadable();
    }
    List<Trait> columns = columns(lot, form.traits());
    LocalDate on = new Boxes(said, choices.today()).date("on", form.on());
    SheetReading sheet = SheetReading.of(form, columns, names(lot).keySet());
    List<PlantValues> good = sheet.good();
    Map<UUID, List<Problem>> wrong = new LinkedHashMap<>(sheet.wrong());
    Questions questions = new Questions(form.asked(), form.checked());
    boolean stored =
        forms.storeLines(
            form,
            said,
            () -> {
              questions.ask(measuring.questions(good));
              Optional.ofNullable(questions.orAsk())
                  .ifPresent(answer -> measuring.answered(lot.lotId(), on, answer, form.by()));
              wrong.putAll(measuring.keep(good, on, form.by()));
            });
    if (!stored) {
      return page(lot, columns, model);
    }
    long kept = good.stream().filter(line -> !wrong.containsKey(line.plantId())).count();
    String status = kept == 1 ? "1 plant stored." : "%d plants stored.".formatted(kept);
    if (wrong.isEmpty()) {
      return LotForms.backTo(lot.label(), status, next);
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

  private String page(Head lot, List<Trait> columns, Model model) {
    model.addAttribute("columns", columns);
    model.addAttribute("possible", possible(lot));
    model.addAttribute("plants", names(lot));
    return lots.page("container/measure", lot, model);
  }
}
