package trialwood.web;

import org.springframework.security.core.session.SessionInformation;
import org.springframework.security.core.session.SessionRegistry;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.stereotype.Component;

/** Who is signed in at this moment, on this instance of the application. */
@Component
public class Sessions {

  private final SessionRegistry registry;

  Sessions(SessionRegistry registry) {
    this.registry = registry;
  }

  /** Signs the account out wherever it is signed in. */
  public void end(String username) {
    registry.getAllPrincipals().stream()
        .filter(account -> ((UserDetails) account).getUsername().equals(username))
        .flatMap(account -> registry.getAllSessions(account, false).stream())
        .forEach(SessionInformation::expireNow);
  }
}
