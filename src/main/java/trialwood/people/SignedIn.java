package trialwood.people;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.authority.SimpleGrantedAuthority;
import org.springframework.security.core.userdetails.User;

/** The account that is signed in, as pages and rules see it. */
public class SignedIn extends User {

  private final Role role;
  private final @Nullable UUID personId;
  private final Set<UUID> sites;

  SignedIn(Account account) {
    super(
        account.username(),
        account.password(),
        account.isEnabled(),
        true,
        true,
        true,
        List.of(new SimpleGrantedAuthority("ROLE_" + account.role())));
    this.role = account.role();
    this.personId = account.personId();
    this.sites = account.sites();
  }

  public Role role() {
    return role;
  }

  public @Nullable UUID personId() {
    return personId;
  }

  /** The sites a cooperator may see; empty for every other role. */
  public Set<UUID> sites() {
    return sites;
  }

  /** Whether records of this site may be seen and written. */
  public boolean mayEnter(UUID siteId) {
    return role != Role.COOPERATOR || sites.contains(siteId);
  }
}
