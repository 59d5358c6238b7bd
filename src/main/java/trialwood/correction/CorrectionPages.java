package trialwood.correction;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BeanPropertyBindingResult;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.record.Refused;
import trialwood.web.ForBench;
import trialwood.web.Forms;

/**
 * Puts labels right: first what was wrong, which stands in the address; then what follows, to be
 * looked at; then it is said.
 */
@Controller
@RequestMapping("/corrections/new")
@ForBench
class CorrectionPages {

  private final Correcting correcting;
  private final Persons persons;
  private final Forms forms;

  CorrectionPages(Correcting correcting, Persons persons, Forms forms) {
    this.correcting = correcting;
    this.persons = persons;
    this.forms = forms;
  }

  @ModelAttribute("kinds")
  Map<String, String> kinds() {
    Map<String, String> words = new LinkedHashMap<>();
    words.put(CorrectionForm.SWAP, "labels were exchanged");
    words.put(CorrectionForm.OTHER, "it is another accession");
    return words;
  }

  @ModelAttribute("people")
  List<Person> people() {
    return persons.findByActiveTrueOrderByInitials();
  }

  /** What was asked stands in the address; a form of its own carries it on, with its key. */
  @GetMapping
  String ask(
      @ModelAttribute("asked") @Nullable CorrectionForm asked, BindingResult read, Model page) {
    CorrectionForm form = asked == null || read.hasErrors() ? blank() : asked;
    page.addAttribute("form", form.opened(List.of(), List.of()));
    if (form.isAsked()) {
      BindingResult said = new BeanPropertyBindingResult(form, "form");
      propose(form, said, page)
          .ifPresent(proposal -> page.addAttribute("form", proposal.ticked(form)));
      if (said.hasErrors()) {
        page.addAttribute(BindingResult.MODEL_KEY_PREFIX + "form", said);
      }
    }
    return "correction/new";
  }

  @PostMapping
  String say(
      @ModelAttribute("form") @Nullable CorrectionForm form,
      BindingResult said,
      Model page,
      RedirectAttributes next) {
    AtomicReference<UUID> correction = new AtomicReference<>();
    if (!forms.store(
        form, said, () -> correction.set(correcting.correct(Objects.requireNonNull(form))))) {
      if (form != null) {
        propose(form, said, page);
      }
      return "correction/new";
    }
    UUID id = correction.get();
    if (id == null) {
      return "redirect:/";
    }
    next.addFlashAttribute("status", "The labels are put right. No record was changed.");
    next.addFlashAttribute("undo", "/corrections/" + id + "/undo");
    return "redirect:/corrections/" + id;
  }

  private Optional<Proposal> propose(CorrectionForm form, BindingResult said, Model page) {
    try {
      Proposal proposal = correcting.propose(form);
      page.addAttribute("proposal", proposal);
      return Optional.of(proposal);
    } catch (Refused refused) {
      if (!said.hasErrors()) {
        refused.problems().forEach(it -> said.rejectValue(it.field(), "refused", it.sentence()));
      }
      return Optional.empty();
    }
  }

  private static CorrectionForm blank() {
    return new CorrectionForm(
        null, null, null, null, null, null, null, null, null, null, null, null, null);
  }
}
