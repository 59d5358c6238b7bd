package trialwood.house.web;

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
import trialwood.house.House;
import trialwood.people.Person;
import trialwood.web.ForBench;
import trialwood.web.Form;

/**
 * The way of every form of a house's log: opened afresh or for a correction, stored, or shown again
 * with what was typed. Those who extend it say at which address, on which page and with which
 * boxes.
 */
abstract class LogPages<F extends LogPages.LogForm> {

  /** What is typed about a house. */
  interface LogForm extends Form {

    /**
     * Reads the boxes and records what they say.
     *
     * @throws trialwood.record.Refused when something cannot be read or is impossible, and with the
     *     questions when something is unusual
     */
    void record(House house, HouseDesk desk);
  }

  private final HouseDesk desk;
  private final String page;

  LogPages(HouseDesk desk, String page) {
    this.desk = desk;
    this.page = page;
  }

  abstract F fresh();

  /** The form of an entry that is to be replaced; empty when the house has no such entry. */
  abstract Optional<F> correcting(UUID entry, House house);

  @ModelAttribute("house")
  House house(@PathVariable String name) {
    return desk.house(name);
  }

  @ModelAttribute("people")
  List<Person> people() {
    return desk.people();
  }

  @GetMapping
  @ForBench
  String open(
      @ModelAttribute("house") House house, @RequestParam Optional<UUID> corrects, Model model) {
    model.addAttribute(
        "form", corrects.map(id -> HouseDesk.found(correcting(id, house))).orElseGet(this::fresh));
    return page;
  }

  @PostMapping
  @ForBench
  String store(
      @ModelAttribute("house") House house,
      @ModelAttribute("form") @Nullable F form,
      BindingResult said,
      RedirectAttributes next) {
    if (!desk.forms().store(form, said, () -> Objects.requireNonNull(form).record(house, desk))) {
      return page;
    }
    next.addFlashAttribute("status", "Written into the log of " + house.name() + ".");
    next.addAttribute("house", house.name());
    return "redirect:/houses/{house}";
  }
}
