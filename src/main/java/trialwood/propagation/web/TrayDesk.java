package trialwood.propagation.web;

import java.time.Clock;
import java.time.LocalDate;
import org.springframework.stereotype.Component;
import trialwood.people.Persons;
import trialwood.propagation.Closing;
import trialwood.propagation.RootScale;
import trialwood.propagation.Rounds;
import trialwood.propagation.TrayMoving;
import trialwood.propagation.TrayRecords;
import trialwood.propagation.TraySheets;
import trialwood.propagation.Weanings;
import trialwood.site.Benches;
import trialwood.web.Forms;

/** What every form of a tray works with. */
@Component
record TrayDesk(
    TraySheets sheets,
    TrayRecords records,
    Closing closing,
    TrayMoving moving,
    Benches benches,
    Rounds rounds,
    RootScale scale,
    Weanings weanings,
    Persons persons,
    Forms forms,
    Clock clock) {

  LocalDate today() {
    return LocalDate.now(clock);
  }
}
