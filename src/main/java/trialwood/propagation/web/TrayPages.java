package trialwood.propagation.web;

import jakarta.validation.Valid;
import java.time.Clock;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Consumer;
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
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.propagation.TakenOut;
import trialwood.propagation.TrayRecords;
import trialwood.propagation.TraySheet;
import trialwood.propagation.TraySheets;
import trialwood.web.ForBench;
import trialwood.web.ForStaff;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** One tray and everything that is written about it. */
@Controller
@RequestMapping("/bench/trays/{label}")
class TrayPages {

  private static final Map<Integer, String> SCORES = Map.of(3, "3", 4, "4", 5, "5");

  private final TraySheets sheets;
  private final TrayRecords records;
  private final Persons persons;
  private final Forms forms;
  private final Clock clock;

  TrayPages(TraySheets sheets, TrayRecords records, Persons persons, Forms forms, Clock clock) {
    this.sheets = sheets;
    this.records = records;
    this.persons = persons;
    this.forms = forms;
    this.clock = clock;
  }

  @ModelAttribute("sheet")
  TraySheet sheet(@PathVariable String label) {
    return sheets.of(label).orElseThrow(NotFound.of("tray " + label));
  }

  @ModelAttribute("people")
  List<Person> people() {
    return persons.findByActiveTrueOrderByInitials();
  }

  @ModelAttribute("today")
  LocalDate today() {
    return LocalDate.now(clock);
  }

  @ModelAttribute("scores")
  Map<Integer, String> scores() {
    return new TreeMap<>(SCORES);
  }

  @ModelAttribute("fates")
  Map<String, String> fates() {
    Map<String, String> words = new LinkedHashMap<>();
    for (TakenOut.Fate fate : TakenOut.Fate.values()) {
      words.put(fate.name(), fate.word());
    }
    return words;
  }

  @ModelAttribute("rootedOrNot")
  Map<String, String> rootedOrNot() {
    return inOrder("yes", "rooted", "no", "no roots");
  }

  @ModelAttribute("votes")
  Map<String, String> votes() {
    return inOrder("no", "is void", "yes", "counts");
  }

  private static Map<String, String> inOrder(
      String key, String word, String other, String otherWord) {
    Map<String, String> options = new LinkedHashMap<>();
    options.put(key, word);
    options.put(other, otherWord);
    return options;
  }

  @GetMapping
  @ForStaff
  String tray() {
    return "bench/tray";
  }

  @GetMapping("/look")
  @ForBench
  String look(Model model) {
    model.addAttribute("form", TrayForms.Look.fresh(today()));
    return "bench/look";
  }

  @PostMapping("/look")
  @ForBench
  String look(
      @ModelAttribute("sheet") TraySheet sheet,
      @Valid @ModelAttribute("form") TrayForms.@Nullable Look form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/look", tray -> form.record(records, tray, today()));
  }

  @GetMapping("/final-count")
  @ForBench
  String finalCount(@ModelAttribute("sheet") TraySheet sheet, Model model) {
    model.addAttribute("form", TrayForms.Final.fresh(today(), sheet.taken()));
    return "bench/final-count";
  }

  @PostMapping("/final-count")
  @ForBench
  String finalCount(
      @ModelAttribute("sheet") TraySheet sheet,
      @Valid @ModelAttribute("form") TrayForms.@Nullable Final form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/final-count", tray -> form.record(records, tray, today()));
  }

  @GetMapping("/taken-out")
  @ForBench
  String takenOut(Model model) {
    model.addAttribute("form", TrayForms.Taken.fresh(today()));
    return "bench/taken-out";
  }

  @PostMapping("/taken-out")
  @ForBench
  String takenOut(
      @ModelAttribute("sheet") TraySheet sheet,
      @Valid @ModelAttribute("form") TrayForms.@Nullable Taken form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/taken-out", tray -> form.record(records, tray, today()));
  }

  @GetMapping("/weaning")
  @ForBench
  String weaning(@ModelAttribute("sheet") TraySheet sheet, Model model) {
    model.addAttribute("form", TrayForms.Wean.fresh(today(), sheet.lastMist()));
    return "bench/weaning";
  }

  @PostMapping("/weaning")
  @ForBench
  String weaning(
      @ModelAttribute("sheet") TraySheet sheet,
      @Valid @ModelAttribute("form") TrayForms.@Nullable Wean form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/weaning", tray -> form.record(records, tray, today()));
  }

  @GetMapping("/ruling")
  @ForBench
  String ruling(Model model) {
    model.addAttribute("form", TrayForms.Ruling.fresh(today()));
    return "bench/ruling";
  }

  @PostMapping("/ruling")
  @ForBench
  String ruling(
      @ModelAttribute("sheet") TraySheet sheet,
      @Valid @ModelAttribute("form") TrayForms.@Nullable Ruling form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/ruling", tray -> form.record(records, tray, today()));
  }

  /** Stores and goes back to the tray, or shows the page again with what was typed. */
  private String store(
      TraySheet sheet,
      @Nullable Form form,
      BindingResult said,
      RedirectAttributes next,
      String page,
      Consumer<UUID> work) {
    UUID tray = sheet.line().trayId();
    if (!forms.store(form, said, () -> work.accept(tray))) {
      return page;
    }
    next.addFlashAttribute("status", "Stored for tray " + sheet.line().tray() + ".");
    next.addAttribute("tray", sheet.line().tray());
    return "redirect:/bench/trays/{tray}";
  }
}
