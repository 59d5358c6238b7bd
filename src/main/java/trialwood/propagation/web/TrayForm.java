package trialwood.propagation.web;

import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.web.Form;

/** What is typed about one tray. Everything stays text until it has been read. */
interface TrayForm extends Form {

  /** The person whose initials were tapped. */
  @Nullable String by();

  /**
   * Reads the boxes and records what they say.
   *
   * @return the record, where it can be corrected by the same form
   * @throws trialwood.record.Refused when something cannot be read or is impossible
   */
  @Nullable UUID record(TrayDesk desk, UUID tray);
}
