package trialwood.web;

import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import trialwood.people.SignedIn;

/** What every template can lean on: the viewer, and the measures that write numbers and dates. */
@ControllerAdvice
class EveryPage {

  private final String nursery;
  private final Doors doors;
  private final Measures measures;

  private final Edition edition;

  EveryPage(
      @Value("${trialwood.nursery}") String nursery,
      Doors doors,
      Measures measures,
      Edition edition) {
    this.nursery = nursery;
    this.doors = doors;
    this.measures = measures;
    this.edition = edition;
  }

  @ModelAttribute("viewer")
  @Nullable Viewer viewer(@AuthenticationPrincipal @Nullable SignedIn account) {
    return account == null
        ? null
        : new Viewer(
            nursery,
            account.getUsername(),
            account.role().word(),
            account.initials(),
            doors.places(account.role()));
  }

  @ModelAttribute("measures")
  Measures measures() {
    return measures;
  }

  /** Tells a device which keeps pages when they are of another edition. */
  @ModelAttribute("edition")
  String edition() {
    return edition.mark();
  }
}
