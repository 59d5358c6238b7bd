package trialwood.propagation.web;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.Person;
import trialwood.propagation.TraySheet;
import trialwood.web.ForBench;
import trialwood.web.NotFound;

/**
 * The way of every form of a tray: opened afresh, stored, or shown again with what was typed. Those
 * who extend it say at which address, on which page and with which boxes.
 */
abstract class TrayFormPages<F extends TrayForm> {

  private final TrayDesk desk;
  private final String page;

  TrayFormPages(TrayDesk desk, String page) {
    this.desk = desk;
    this.page = page;
  }

  /**
   * The form as it opens.
   *
   * @param corrects the record that is to be corrected, where the form is opened for that
   */
  abstract F fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects);

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

  @GetMapping
  @ForBench
  String open(
      @ModelAttribute("sheet") TraySheet sheet,
      @RequestParam Optional<UUID> corrects,
      Model model) {
    model.addAttribute("form", fresh(sheet, today(), corrects));
    return page;
  }

  @PostMapping
  @ForBench
  String store(
      @ModelAttribute("sheet") TraySheet sheet,
      @ModelAttribute("form") @Nullable F form,
      BindingResult said,
      RedirectAttributes next) {
    UUID tray = sheet.line().trayId();
    if (!desk.forms().store(form, said, () -> Objects.requireNonNull(form).record(desk, tray))) {
      return page;
    }
    next.addFlashAttribute("status", "Stored for tray " + sheet.line().tray() + ".");
    next.addAttribute("tray", sheet.line().tray());
    return "redirect:/bench/trays/{tray}";
  }
}
