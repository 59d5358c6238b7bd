package trialwood.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.springframework.validation.BindingResult;
import trialwood.record.Asked;
import trialwood.record.Problem;
import trialwood.record.Refused;
import trialwood.record.Submissions;

/**
 * Stores what a form says, once, or puts what is wrong beside its fields.
 *
 * <pre>{@code
 * record SiteForm(UUID formKey, @NotBlank(message = "Give the site a name.") String name)
 *     implements Form {}
 *
 * @PostMapping("/sites/new")
 * @ForAdministrator
 * String add(
 *     @Valid @ModelAttribute("form") @Nullable SiteForm form,
 *     BindingResult said,
 *     RedirectAttributes next) {
 *   if (!forms.store(form, said, () -> sites.add(form.name()))) {
 *     return "site/new"; // the same page, with what was typed and what is wrong
 *   }
 *   next.addFlashAttribute("status", "Stored.");
 *   return "redirect:/sites";
 * }
 * }</pre>
 *
 * The form's page opens with a fresh key, {@code new SiteForm(UUID.randomUUID(), "")}, and carries
 * it in {@code fragments/field :: key}. Sent a second time, the form is not stored again and the
 * caller redirects as it did the first time; redirect to something that both can name.
 */
@Component
public class Forms {

  /** The mark of a form that is shown once more before it is stored; see {@link KeptFormPage}. */
  static final String LOOK_AGAIN = "lookAgain";

  /** The mark of what was asked about and may be stored with a reason. */
  static final String ASKED = "asked";

  private static final String REFUSED = "refused";

  private static final Pattern WORD_BREAK = Pattern.compile("_(\\p{L})");

  private final Submissions submissions;
  private final TransactionTemplate transaction;
  private final HttpServletRequest request;

  /**
   * @param request whichever is being answered when it is asked
   */
  Forms(
      Submissions submissions,
      PlatformTransactionManager transactions,
      HttpServletRequest request) {
    this.submissions = submissions;
    this.request = request;
    this.transaction = new TransactionTemplate(transactions);
  }

  /**
   * Does the work in one transaction with the form's key. Nothing is stored when something is wrong
   * with the form already or the work is refused.
   *
   * @param form what was bound; null when not even that could be done, and {@code said} says why
   * @param said takes each {@link Problem} of a {@link Refused} beside its field; a problem with a
   *     field that the form does not have stands on top of the form An {@link Asked} comes back
   *     under {@link #ASKED}; {@code fragments/field :: checked} then asks for the reason
   * @return whether the form is stored, now or by an earlier sending
   */
  public boolean store(@Nullable Form form, BindingResult said, Runnable work) {
    if (said.hasErrors() || form == null) {
      return false;
    }
    if (request.getParameter(LOOK_AGAIN) != null) {
      said.reject(LOOK_AGAIN, "This is what you had typed. Look it over and send it once more.");
      return false;
    }
    if (form.formKey() == null) {
      said.reject("formKey", "This form came without its key. Open it afresh and send it again.");
      return false;
    }
    try {
      transaction.executeWithoutResult(
          status -> {
            if (submissions.first(form.formKey())) {
              work.run();
            }
          });
    } catch (Refused refused) {
      String code = refused instanceof Asked ? ASKED : REFUSED;
      refused.problems().forEach(problem -> say(problem, code, form, said));
    } catch (OptimisticLockingFailureException faster) {
      if (!(form instanceof EditForm)) {
        throw faster;
      }
      Refused.changedMeanwhile().problems().forEach(problem -> say(problem, REFUSED, form, said));
    }
    return !said.hasErrors();
  }

  private static void say(Problem problem, String code, Form form, BindingResult said) {
    String field = WORD_BREAK.matcher(problem.field()).replaceAll(m -> m.group(1).toUpperCase());
    String component = field.split("[.\\[]", 2)[0];
    if (Arrays.stream(form.getClass().getRecordComponents())
        .anyMatch(known -> known.getName().equals(component))) {
      said.rejectValue(field, code, problem.sentence());
    } else {
      said.reject(code, problem.sentence());
    }
  }
}
