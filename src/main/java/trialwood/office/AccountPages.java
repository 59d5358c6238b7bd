package trialwood.office;

import jakarta.validation.Valid;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Map.Entry;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Household;
import trialwood.people.Passwords;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.people.SignedIn;
import trialwood.site.Sites;
import trialwood.web.ForAdministrator;
import trialwood.web.Forms;
import trialwood.web.NotFound;
import trialwood.web.Sessions;

/** What signs in: opening an account, closing it, opening it again. */
@Controller
@ForAdministrator
class AccountPages {

  private final Household household;
  private final Accounts accounts;
  private final Persons persons;
  private final Sites sites;
  private final Sessions sessions;
  private final Forms forms;

  AccountPages(
      Household household,
      Accounts accounts,
      Persons persons,
      Sites sites,
      Sessions sessions,
      Forms forms) {
    this.household = household;
    this.accounts = accounts;
    this.persons = persons;
    this.sites = sites;
    this.sessions = sessions;
    this.forms = forms;
  }

  @GetMapping("/accounts/new")
  String blank(Model page) {
    page.addAttribute("form", AccountForm.blank());
    return page(page);
  }

  @PostMapping("/accounts/new")
  String open(
      @Valid @ModelAttribute("form") @Nullable AccountForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> open(form))) {
      return page(page);
    }
    next.addFlashAttribute("status", form.username().strip() + " can sign in.");
    return "redirect:/people";
  }

  /** Whoever is signed in with it is signed out at once. */
  @PostMapping("/accounts/{id}/close")
  String close(
      @PathVariable UUID id, @AuthenticationPrincipal SignedIn me, RedirectAttributes next) {
    Account account = account(id);
    if (account.username().equals(me.getUsername())) {
      next.addFlashAttribute("status", "You are signed in with this account; it stays open.");
      return "redirect:/people";
    }
    household.close(id);
    sessions.end(account.username());
    next.addFlashAttribute("status", account.username() + " is closed.");
    next.addFlashAttribute("undo", "/accounts/" + id + "/reopen");
    return "redirect:/people";
  }

  @PostMapping("/accounts/{id}/reopen")
  String reopen(@PathVariable UUID id, RedirectAttributes next) {
    Account account = account(id);
    household.reopen(id);
    next.addFlashAttribute("status", account.username() + " can sign in again.");
    return "redirect:/people";
  }

  private void open(AccountForm form) {
    household.open(form.username(), form.password(), form.role(), form.person(), form.sites());
  }

  private String page(Model page) {
    page.addAttribute("passwordRule", Passwords.RULE);
    page.addAttribute("roles", roles());
    page.addAttribute("persons", people());
    page.addAttribute("sites", sites.findAllByOrderByCode());
    return "office/new-account";
  }

  private static List<Entry<Role, String>> roles() {
    return Arrays.stream(Role.values()).map(role -> Map.entry(role, role.word())).toList();
  }

  private List<Entry<UUID, String>> people() {
    return persons.findByActiveTrueOrderByInitials().stream()
        .map(person -> Map.entry(person.id(), person.initials() + " " + person.name()))
        .toList();
  }

  private Account account(UUID id) {
    return accounts.findById(id).orElseThrow(NotFound.of("such account"));
  }
}
