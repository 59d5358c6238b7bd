package trialwood.web;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import trialwood.record.Refused;

/**
 * A form that changes a record which people edit by hand. It carries the version that the page
 * showed; where somebody else was faster, the page comes back with what each of the two wrote.
 */
public interface EditForm extends Form {

  /** Of the record when the page was opened. */
  @Nullable Integer version();

  /** What the form says, label by label, as people read it. */
  Map<String, String> words();

  /**
   * @param stored the record's version now
   * @throws Refused when it is not the one the page showed
   */
  default void sees(int stored) {
    if (!Objects.equals(version(), stored)) {
      throw Refused.changedMeanwhile();
    }
  }

  /** Shows what both wrote where a version was refused; the next sending is against the newer. */
  static void showBoth(@Nullable EditForm typed, EditForm stored, BindingResult said, Model page) {
    boolean behind = typed != null && said.hasFieldErrors("version");
    page.addAttribute("seenVersion", typed == null || behind ? stored.version() : typed.version());
    if (behind) {
      page.addAttribute("differences", Difference.between(stored.words(), typed.words()));
    }
  }
}
