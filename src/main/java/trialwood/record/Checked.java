package trialwood.record;

import jakarta.persistence.Embeddable;

/**
 * Something unusual that was asked about before it was stored, and what somebody found who checked.
 *
 * @param asked the questions, as they were read
 * @param checked the answer to all of them
 */
@Embeddable
public record Checked(String asked, String checked) {

  public Checked {
    Check.that()
        .holds(!checked.isBlank(), "checked", "Say what you found when you checked.")
        .fits(asked, 2000, "asked")
        .fits(checked, 300, "checked")
        .orRefuse();
  }
}
