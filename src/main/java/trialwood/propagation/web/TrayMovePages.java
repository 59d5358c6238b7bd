package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
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
import trialwood.propagation.TrayMoves;
import trialwood.propagation.TrayPassage;
import trialwood.propagation.TraySheet;
import trialwood.record.Refused;
import trialwood.unit.Unit;
import trialwood.unit.UnitKind;
import trialwood.unit.Units;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.NotFound;

/** Cuttings that go from tray to tray: a tray is split, or another is put into it. */
@Controller
@RequestMapping("/bench/trays/{label}")
@ForBench
class TrayMovePages {

  private final TrayDesk desk;
  private final TrayMoves moves;
  private final Units units;

  TrayMovePages(TrayDesk desk, TrayMoves moves, Units units) {
    this.desk = desk;
    this.moves = moves;
    this.units = units;
  }

  /**
   * @param to label of the new tray
   */
  record SplitForm(
      @Nullable UUID formKey,
      @Nullable String number,
      @Nullable String to,
      @Nullable String cells,
      @Nullable String on,
      @Nullable String note,
      @Nullable String by)
      implements Form {}

  /**
   * @param to label of the tray that takes the cuttings, read off it
   * @param from label of the tray that gives them, read off it
   * @param number all that are there, when empty
   */
  record BringForm(
      @Nullable UUID formKey,
      @Nullable String to,
      @Nullable String from,
      @Nullable String number,
      @Nullable String on,
      @Nullable String note,
      @Nullable String by)
      implements Form {}

  @ModelAttribute("sheet")
  TraySheet sheet(@PathVariable String label) {
    return desk.sheets().of(label).orElseThrow(NotFound.of("tray " + label));
  }

  @ModelAttribute("people")
  List<Person> people() {
    return desk.persons().findByActiveTrueOrderByInitials();
  }

  @ModelAttribute("today")
  LocalDate today() {
    return desk.today();
  }

  @GetMapping("/split")
  String openSplit(@ModelAttribute("sheet") TraySheet sheet, Model page) {
    String cells = String.valueOf(sheet.tray().cells());
    page.addAttribute(
        "form", new SplitForm(UUID.randomUUID(), "", "", cells, today().toString(), "", null));
    return "bench/split";
  }

  @PostMapping("/split")
  String split(
      @ModelAttribute("sheet") TraySheet sheet,
      @ModelAttribute("form") @Nullable SplitForm form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/split", () -> split(sheet, Objects.requireNonNull(form)));
  }

  private TrayPassage split(TraySheet sheet, SplitForm form) {
    Entry entry = new Entry();
    int number = entry.count("number", form.number());
    String to = entry.words("to", form.to(), "Scan or type the label of the new tray.");
    int cells = entry.count("cells", form.cells());
    LocalDate on = entry.day("on", form.on(), today());
    UUID person = entry.person("by", form.by());
    units
        .scanned(to)
        .ifPresent(worn -> entry.wrong("to", "This is the label of %s.".formatted(worn.label())));
    entry.orRefuse();
    return moves.split(
        sheet.line().trayId(), to, cells, on, number, Entry.wordsIfAny(form.note()), person);
  }

  @GetMapping("/bring")
  String openBring(Model page) {
    page.addAttribute(
        "form", new BringForm(UUID.randomUUID(), "", "", "", today().toString(), "", null));
    return "bench/bring";
  }

  @PostMapping("/bring")
  String bring(
      @ModelAttribute("sheet") TraySheet sheet,
      @ModelAttribute("form") @Nullable BringForm form,
      BindingResult said,
      RedirectAttributes next) {
    return store(
        sheet, form, said, next, "bench/bring", () -> bring(sheet, Objects.requireNonNull(form)));
  }

  private TrayPassage bring(TraySheet sheet, BringForm form) {
    Entry entry = new Entry();
    UUID to = tray("to", form.to(), entry);
    UUID from = tray("from", form.from(), entry);
    Integer number = entry.countIfAny("number", form.number());
    LocalDate on = entry.day("on", form.on(), today());
    UUID person = entry.person("by", form.by());
    if (to != null && !to.equals(sheet.line().trayId())) {
      entry.wrong("to", "This label is not that of tray %s.".formatted(sheet.line().tray()));
    }
    entry.orRefuse();
    return moves.bring(
        Objects.requireNonNull(from),
        Objects.requireNonNull(to),
        on,
        number,
        Entry.wordsIfAny(form.note()),
        person);
  }

  /** The one place where the label of a tray is read. */
  private @Nullable UUID tray(String field, @Nullable String scanned, Entry entry) {
    String label = entry.words(field, scanned, "Scan or type the label.");
    UUID tray =
        units.scanned(label).filter(it -> it.kind() == UnitKind.TRAY).map(Unit::id).orElse(null);
    if (tray == null && !label.isEmpty()) {
      entry.wrong(field, "No tray %s is on record.".formatted(label));
    }
    return tray;
  }

  @PostMapping("/passages/{id}/undo")
  String undo(
      @ModelAttribute("sheet") TraySheet sheet, @PathVariable UUID id, RedirectAttributes next) {
    try {
      moves.takeBack(id, "Taken back at once.", today(), null);
      next.addFlashAttribute("status", "Taken back: the cuttings are where they were.");
    } catch (Refused refused) {
      next.addFlashAttribute("status", refused.getMessage());
    }
    return home(sheet, next);
  }

  private String store(
      TraySheet sheet,
      @Nullable Form form,
      BindingResult said,
      RedirectAttributes next,
      String page,
      Supplier<TrayPassage> work) {
    AtomicReference<TrayPassage> made = new AtomicReference<>();
    if (!desk.forms().store(form, said, () -> made.set(work.get()))) {
      return page;
    }
    next.addFlashAttribute("status", "Stored for tray " + sheet.line().tray() + ".");
    TrayPassage passage = made.get();
    if (passage != null) {
      next.addFlashAttribute(
          "undo", "/bench/trays/%s/passages/%s/undo".formatted(sheet.line().tray(), passage.id()));
    }
    return home(sheet, next);
  }

  private static String home(TraySheet sheet, RedirectAttributes next) {
    next.addAttribute("tray", sheet.line().tray());
    return "redirect:/bench/trays/{tray}";
  }
}
