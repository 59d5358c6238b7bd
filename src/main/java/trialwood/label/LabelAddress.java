package trialwood.label;

import java.util.Locale;
import java.util.regex.Pattern;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/**
 * What the square of a label says: the short code alone, or behind the nursery's address where one
 * is set, so that the camera of a phone opens the page.
 */
@Component
class LabelAddress {

  private static final Pattern PLAIN = Pattern.compile("(?i)https?://[a-z0-9.-]+(:\\d{1,5})?");

  private final String address;

  /**
   * @param address such as https://nursery.example, without a path; empty for none
   */
  LabelAddress(@Value("${trialwood.address:}") String address) {
    this.address = address.strip();
    if (!this.address.isEmpty() && !PLAIN.matcher(this.address).matches()) {
      throw new IllegalArgumentException(
          "trialwood.address is to be like https://nursery.example, not " + address);
    }
  }

  /** In capitals only: of these a square needs fewer modules, and an address may have them. */
  String payload(String code) {
    return address.isEmpty() ? code : address.toUpperCase(Locale.ROOT) + "/S/" + code;
  }
}
