package trialwood.house.web;

import java.util.List;
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
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.house.House;
import trialwood.house.HouseLog;
import trialwood.house.HouseSpray;
import trialwood.house.HouseSprays;
import trialwood.house.NewSpray;
import trialwood.people.Person;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.Form;
import trialwood.web.Questions;

/** Writing down a spray, or correcting what was written. */
@Controller
@RequestMapping("/houses/{name}/spray")
class SprayPages {

  private final HouseDesk desk;
  private final HouseSprays sprays;

  SprayPages(HouseDesk desk, HouseSprays sprays) {
    this.desk = desk;
    this.sprays = sprays;
  }

  record SprayForm(
      @Nullable UUID formKey,
      @Nullable String product,
      @Nullable String rate,
      @Nullable String area,
      @Nullable String against,
      @Nullable String on,
      @Nullable String endedAt,
      @Nullable String reEntryHours,
      @Nullable String licence,
      @Nullable String by,
      @Nullable UUID corrects,
      @Nullable String supersedeReason,
      @Nullable String asked,
      @Nullable String checked)
      implements Form {

    static SprayForm fresh(HouseDesk desk) {
      return new SprayForm(
          UUID.randomUUID(),
          "",
          "",
          "",
          "",
          desk.todayTyped(),
          desk.nowTyped(),
          "",
          "",
          null,
          null,
          null,
          null,
          null);
    }

    static SprayForm correcting(HouseSpray spray, HouseDesk desk) {
      return new SprayForm(
          UUID.randomUUID(),
          spray.product(),
          spray.rate(),
          spray.area(),
          spray.reason(),
          desk.dayTyped(spray.endedAt()),
          desk.hourTyped(spray.endedAt()),
          String.valueOf(spray.reEntryHours()),
          spray.licence(),
          Objects.toString(spray.recorded().personId(), null),
          spray.id(),
          "",
          null,
          null);
    }

    void record(House house, HouseDesk desk) {
      Entry entry = new Entry();
      NewSpray said =
          new NewSpray(
              desk.moment(entry, "on", on, "endedAt", endedAt),
              entry.count("reEntryHours", reEntryHours),
              entry.words("product", product, "Write the product as on its label."),
              Entry.wordsIfAny(rate),
              entry.words("area", area, "Write what was treated: the whole house, bench 2."),
              Entry.wordsIfAny(against),
              Entry.wordsIfAny(licence));
      UUID person = entry.person("by", by);
      HouseLog.Instead instead = HouseDesk.instead(entry, corrects, supersedeReason);
      entry.orRefuse();
      Questions questions = new Questions(asked, checked);
      questions.ask(HouseSpray.questions(said));
      desk.log().spray(house, said, questions.orAsk(), instead, person);
    }
  }

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
      @ModelAttribute("house") House house, @RequestParam Optional<UUID> corrects, Model page) {
    page.addAttribute(
        "form",
        corrects
            .map(
                id ->
                    SprayForm.correcting(
                        HouseDesk.found(
                            sprays.findById(id).filter(s -> s.houseId().equals(house.id()))),
                        desk))
            .orElseGet(() -> SprayForm.fresh(desk)));
    return "house/spray";
  }

  @PostMapping
  @ForBench
  String store(
      @ModelAttribute("house") House house,
      @ModelAttribute("form") @Nullable SprayForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!desk.forms().store(form, said, () -> Objects.requireNonNull(form).record(house, desk))) {
      return "house/spray";
    }
    next.addFlashAttribute("status", "Written into the log of " + house.name() + ".");
    next.addAttribute("house", house.name());
    return "redirect:/houses/{house}";
  }
}
