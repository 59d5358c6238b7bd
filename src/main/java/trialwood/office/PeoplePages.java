package trialwood.office;

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
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.Household;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.record.History;
import trialwood.web.Change;
import trialwood.web.EditForm;
import trialwood.web.ForAdministrator;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Place;

/** The persons of the nursery. */
@Controller
@ForAdministrator
class PeoplePages {

  private final Persons persons;
  private final Household household;
  private final AccountRows accounts;
  private final History history;
  private final Forms forms;

  PeoplePages(
      Persons persons, Household household, AccountRows accounts, History history, Forms forms) {
    this.persons = persons;
    this.household = household;
    this.accounts = accounts;
    this.history = history;
    this.forms = forms;
  }

  @GetMapping("/people")
  @Place(key = "people", label = "People", order = 90)
  String list(Model page) {
    page.addAttribute("persons", persons.findAllByOrderByInitials());
    page.addAttribute("accounts", accounts.all());
    return "office/people";
  }

  @GetMapping("/people/new")
  String blank(Model page) {
    page.addAttribute("form", PersonForm.blank());
    return "office/new-person";
  }

  @PostMapping("/people/new")
  String add(
      @ModelAttribute("form") @Nullable PersonForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(
        form, said, () -> household.takeIn(form.initials(), form.name(), form.duty()))) {
      return "office/new-person";
    }
    next.addFlashAttribute("status", form.name().strip() + " is on the list.");
    return "redirect:/people";
  }

  @GetMapping("/people/{id}")
  String show(@PathVariable UUID id, Model page) {
    Person person = person(id);
    PersonForm form = PersonForm.of(person);
    page.addAttribute("form", form);
    page.addAttribute("seenVersion", form.version());
    return page(person, page);
  }

  /** When two people change it at once, the page shows what each wrote before it is sent again. */
  @PostMapping("/people/{id}")
  String change(
      @PathVariable UUID id,
      @ModelAttribute("form") @Nullable PersonForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    Person person = person(id);
    boolean stored =
        forms.store(
            form,
            said,
            () -> household.describe(id, form.version(), form.name(), form.duty(), form.active()));
    if (!stored) {
      EditForm.showBoth(form, PersonForm.of(person(id)), said, page);
      return page(person, page);
    }
    next.addFlashAttribute("status", "What is said of " + person.initials() + " is changed.");
    return "redirect:/people";
  }

  private String page(Person person, Model page) {
    page.addAttribute("person", person);
    page.addAttribute(
        "changes",
        Change.of(
            history.of(Person.class, Objects.requireNonNull(person.id())),
            then -> PersonForm.of(then).words()));
    return "office/person";
  }

  private Person person(UUID id) {
    return persons.findById(id).orElseThrow(NotFound.of("such person"));
  }
}
