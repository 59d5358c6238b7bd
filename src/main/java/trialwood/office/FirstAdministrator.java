package trialwood.office;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.FirstLink;
import trialwood.people.Passwords;
import trialwood.web.ForEveryone;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** The way in when nobody has an account yet. */
@Controller
@ForEveryone
class FirstAdministrator {

  record FirstForm(@Nullable UUID formKey, String username, String password) implements Form {

    FirstForm {
      username = username == null ? "" : username;
      password = password == null ? "" : password;
    }
  }

  private final FirstLink link;
  private final Forms forms;
  private final Environment environment;

  FirstAdministrator(FirstLink link, Forms forms, Environment environment) {
    this.link = link;
    this.forms = forms;
    this.environment = environment;
  }

  /** On the console only: the link is a key, a log file is read by others. */
  @EventListener(ApplicationReadyEvent.class)
  @Order(Ordered.LOWEST_PRECEDENCE)
  void printTheLink() {
    String port = environment.getProperty("local.server.port", "8080");
    link.issue()
        .ifPresent(
            token ->
                System.out.printf(
                    "%nNobody can sign in yet. Make the first administrator here, within a day:%n"
                        + "  http://localhost:%s/first/%s%n%n",
                    port, token));
  }

  @GetMapping("/first/{token}")
  String show(@PathVariable String token, Model page) {
    if (!link.holds(token)) {
      throw new NotFound("such link");
    }
    page.addAttribute("form", new FirstForm(UUID.randomUUID(), "", ""));
    return "office/first";
  }

  @PostMapping("/first/{token}")
  String make(
      @PathVariable String token,
      @ModelAttribute("form") @Nullable FirstForm form,
      BindingResult said,
      RedirectAttributes next) {
    if (!forms.store(form, said, () -> link.use(token, form.username(), form.password()))) {
      return "office/first";
    }
    next.addFlashAttribute("status", "The administrator's account is made. Sign in with it.");
    return "redirect:/sign-in";
  }

  @ModelAttribute("passwordRule")
  String passwordRule() {
    return Passwords.RULE;
  }
}
