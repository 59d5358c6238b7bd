package trialwood.testing;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.user;

import java.util.Set;
import java.util.UUID;
import org.springframework.test.web.servlet.request.RequestPostProcessor;
import trialwood.people.Role;
import trialwood.people.SignedIn;

/** Somebody signed in, for a request: {@code get("/").with(Someone.as(Role.BENCH))}. */
public final class Someone {

  private Someone() {}

  /** An account of the role without a person; a cooperator of no site that exists. */
  public static RequestPostProcessor as(Role role) {
    return role == Role.COOPERATOR
        ? cooperatorAt(UUID.fromString("00000000-0000-0000-0000-000000000000"))
        : user(SignedIn.as(role.word(), role, Set.of()));
  }

  /** A cooperator who may see these sites. */
  public static RequestPostProcessor cooperatorAt(UUID... sites) {
    return user(SignedIn.as("cooperator", Role.COOPERATOR, Set.of(sites)));
  }
}
