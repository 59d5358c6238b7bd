package trialwood.propagation.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpSession;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
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
import trialwood.propagation.RoundFilter;
import trialwood.propagation.TraySheet;
import trialwood.web.ForBench;
import trialwood.web.NotFound;

/**
 * The way of every form of a tray: opened afresh, stored, or shown again with what was typed; on a
 * round the next tray's form follows at once. Those who extend it say at which address, on which
 * page and with which boxes.
 */
abstract class TrayFormPages<F extends TrayForm> {

  /** Whose initials were tapped last, kept for the session. */
  private static final String BY = "bench.by";

  private final TrayDesk desk;
  private final String form;

  /**
   * @param form last part of the form's address, which is also the name of its page
   */
  TrayFormPages(TrayDesk desk, String form) {
    this.desk = desk;
    this.form = form;
  }

  /**
   * The form as it opens.
   *
   * @param corrects the record that is to be corrected, where the form is opened for that
   * @param by whoever used a form last
   */
  abstract F fresh(TraySheet sheet, LocalDate today, Optional<UUID> corrects, @Nullable String by);

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
      HttpServletRequest request,
      Model model) {
    Object by = request.getSession().getAttribute(BY);
    model.addAttribute("form", fresh(sheet, today(), corrects, by == null ? null : by.toString()));
    return shown(sheet, request, model);
  }

  @PostMapping
  @ForBench
  String store(
      @ModelAttribute("sheet") TraySheet sheet,
      @ModelAttribute("form") @Nullable F form,
      BindingResult said,
      HttpServletRequest request,
      Model model,
      RedirectAttributes next) {
    String tray = sheet.line().tray();
    UUID id = sheet.line().trayId();
    AtomicReference<@Nullable UUID> stored = new AtomicReference<>();
    if (!desk.forms()
        .store(form, said, () -> stored.set(Objects.requireNonNull(form).record(desk, id)))) {
      return shown(sheet, request, model);
    }
    keepPerson(request.getSession(), Objects.requireNonNull(form));
    RoundFilter filter = round(request);
    boolean conflict = desk.closing().isInConflict(id);
    next.addFlashAttribute(
        "status",
        conflict
            ? "Stored for tray %s. It contradicts another count, so neither is used until a person settles on one."
                .formatted(tray)
            : "Stored for tray %s.".formatted(tray));
    next.addFlashAttribute("further", further(tray, filter, stored.get(), conflict));
    return "redirect:"
        + (filter == null
            ? "/bench/trays/" + tray
            : new RoundPlace(desk.rounds().on(today()).along(filter), filter, tray).onwards());
  }

  private String shown(TraySheet sheet, HttpServletRequest request, Model model) {
    RoundFilter filter = round(request);
    String tray = sheet.line().tray();
    model.addAttribute("action", RoundPlace.form(tray, form, filter));
    if (filter != null) {
      model.addAttribute(
          "place", new RoundPlace(desk.rounds().on(today()).along(filter), filter, tray));
    }
    return "bench/" + form;
  }

  private Map<String, String> further(
      String tray, @Nullable RoundFilter filter, @Nullable UUID stored, boolean conflict) {
    Map<String, String> further = new LinkedHashMap<>();
    if (conflict) {
      further.put("See both", "/bench/trays/" + tray);
    } else if (stored != null) {
      String address = RoundPlace.form(tray, form, filter);
      further.put(
          "Correct it", address + (address.contains("?") ? "&" : "?") + "corrects=" + stored);
    }
    return further;
  }

  private static void keepPerson(HttpSession session, TrayForm form) {
    if (form.by() != null && !form.by().isBlank()) {
      session.setAttribute(BY, form.by());
    }
  }

  /** The round that the form stands in, read off the address; null by itself. */
  private static @Nullable RoundFilter round(HttpServletRequest request) {
    return request.getParameter("round") == null
        ? null
        : new RoundFilter(
            request.getParameter("bench"),
            request.getParameter("run"),
            request.getParameter("block"));
  }
}
