package trialwood.house.web;

import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.house.House;
import trialwood.web.EditForm;
import trialwood.web.ForKeeper;
import trialwood.web.ForStaff;

/** The houses, what is said of each, and its log. */
@Controller
class HousePages {

  private final HouseDesk desk;
  private final HouseBook book;

  HousePages(HouseDesk desk, HouseBook book) {
    this.desk = desk;
    this.book = book;
  }

  @GetMapping("/houses")
  @ForStaff
  String list(Model page) {
    page.addAttribute("houses", book.houses());
    return "house/houses";
  }

  /** The newest of the log, or with {@code all} the whole of it. */
  @GetMapping("/houses/{name}")
  @ForStaff
  String show(@PathVariable String name, @RequestParam @Nullable String all, Model page) {
    House house = desk.house(name);
    page.addAttribute("house", house);
    page.addAttribute("entries", book.log(Objects.requireNonNull(house.id()), all != null));
    return "house/house";
  }

  @GetMapping("/houses/new")
  @ForKeeper
  String open(Model page) {
    page.addAttribute("form", new HouseForm(UUID.randomUUID(), null, "", null, ""));
    return "house/new-house";
  }

  @PostMapping("/houses/new")
  @ForKeeper
  String add(
      @ModelAttribute("form") @Nullable HouseForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!desk.forms().store(form, said, () -> Objects.requireNonNull(form).add(desk.houses()))) {
      return "house/new-house";
    }
    next.addFlashAttribute("status", "The house is on record.");
    return "redirect:/houses";
  }

  @GetMapping("/houses/{name}/edit")
  @ForKeeper
  String edit(@PathVariable String name, Model page) {
    HouseForm form = HouseForm.of(desk.house(name));
    page.addAttribute("form", form);
    page.addAttribute("house", desk.house(name));
    page.addAttribute("seenVersion", form.version());
    return "house/edit-house";
  }

  @PostMapping("/houses/{name}/edit")
  @ForKeeper
  String change(
      @PathVariable String name,
      @ModelAttribute("form") @Nullable HouseForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    House house = desk.house(name);
    if (!desk.forms()
        .store(form, said, () -> Objects.requireNonNull(form).change(desk.house(name)))) {
      page.addAttribute("house", house);
      EditForm.showBoth(form, HouseForm.of(house), said, page);
      return "house/edit-house";
    }
    next.addFlashAttribute("status", "What is said of " + house.name() + " is changed.");
    next.addAttribute("house", house.name());
    return "redirect:/houses/{house}";
  }
}
