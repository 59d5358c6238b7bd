package trialwood.house.web;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.annotation.AuthenticationPrincipal;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ModelAttribute;
import trialwood.house.HouseLog;
import trialwood.house.HouseSprays.Closed;
import trialwood.people.Role;
import trialwood.people.SignedIn;

/**
 * Every page of the nursery's own people says which houses nobody may go into: whoever holds a
 * phone may be on the way to one, whatever page is open.
 */
@ControllerAdvice
class ClosedHouses {

  private final HouseLog log;

  ClosedHouses(HouseLog log) {
    this.log = log;
  }

  @ModelAttribute("closedHouses")
  List<Closed> closed(@AuthenticationPrincipal @Nullable SignedIn account) {
    return account == null || account.role() == Role.COOPERATOR ? List.of() : log.closed();
  }
}
