package trialwood.correction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.gate.LaterCorrections;
import trialwood.people.SignedIn;
import trialwood.record.Refused;
import trialwood.web.Entry;
import trialwood.web.ForBench;
import trialwood.web.ForStaff;
import trialwood.web.Form;
import trialwood.web.Forms;
import trialwood.web.NotFound;

/** One correction of labels: what it says, where the doubt began, which decisions it reaches. */
@Controller
@RequestMapping("/corrections/{id}")
class CorrectionPage {

  private final Sayings sayings;
  private final LaterCorrections decisions;
  private final Correcting correcting;
  private final Forms forms;

  CorrectionPage(Sayings sayings, LaterCorrections decisions, Correcting correcting, Forms forms) {
    this.sayings = sayings;
    this.decisions = decisions;
    this.correcting = correcting;
    this.forms = forms;
  }

  record Back(@Nullable UUID formKey, @Nullable String reason) implements Form {}

  @GetMapping
  @ForStaff
  String show(@PathVariable UUID id, Model page) {
    page.addAttribute("form", new Back(UUID.randomUUID(), ""));
    return page(id, page);
  }

  @PostMapping("/take-back")
  @ForBench
  String takeBack(
      @PathVariable UUID id,
      @ModelAttribute("form") @Nullable Back form,
      BindingResult said,
      @AuthenticationPrincipal SignedIn account,
      Model page,
      RedirectAttributes next) {
    if (!forms.store(
        form, said, () -> takeBack(id, Objects.requireNonNull(form), account.personId()))) {
      return page(id, page);
    }
    next.addFlashAttribute("status", "Taken back: what held before holds again.");
    return "redirect:/corrections/" + id;
  }

  private void takeBack(UUID id, Back form, @Nullable UUID person) {
    Entry entry = new Entry();
    String reason = entry.words("reason", form.reason(), "Say why it is taken back.");
    entry.orRefuse();
    correcting.takeBack(id, reason, person);
  }

  /** From the line of what was just done; pressed twice, it is done once. */
  @PostMapping("/undo")
  @ForBench
  String undo(
      @PathVariable UUID id, @AuthenticationPrincipal SignedIn account, RedirectAttributes next) {
    try {
      correcting.takeBack(id, "Taken back at once.", account.personId());
      next.addFlashAttribute("status", "Taken back: what held before holds again.");
    } catch (Refused refused) {
      next.addFlashAttribute("status", refused.getMessage());
    }
    return "redirect:/corrections/" + id;
  }

  private String page(UUID id, Model page) {
    List<Sayings.Saying> said = sayings.in(id);
    if (said.isEmpty()) {
      throw NotFound.of("such correction").get();
    }
    Map<String, List<Sayings.Saying>> byAccession =
        said.stream()
            .collect(
                Collectors.groupingBy(
                    Sayings.Saying::code, LinkedHashMap::new, Collectors.toList()));
    page.addAttribute("id", id);
    page.addAttribute("first", said.get(0));
    page.addAttribute("units", said.stream().map(Sayings.Saying::unitId).distinct().count());
    page.addAttribute("said", byAccession);
    page.addAttribute("began", sayings.answeredBy(id));
    page.addAttribute("decisions", decisions.of(id));
    page.addAttribute("later", sayings.after(id).orElse(null));
    return "correction/correction";
  }
}
