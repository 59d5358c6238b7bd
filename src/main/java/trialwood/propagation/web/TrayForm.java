package trialwood.propagation.web;

import java.util.UUID;
import trialwood.web.Form;

/** What is typed about one tray. Everything stays text until it has been read. */
interface TrayForm extends Form {

  /**
   * Reads the boxes and records what they say.
   *
   * @throws trialwood.record.Refused when something cannot be read or is impossible
   */
  void record(TrayDesk desk, UUID tray);
}
