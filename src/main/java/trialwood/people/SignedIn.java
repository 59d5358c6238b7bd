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
  private final String initials;
  private final Set<UUID> sites;

  /**
   * @param person the account's person, if it has one
   */
  SignedIn(Account account, @Nullable Person person) {
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
    this.initials = person == null ? account.username() : person.initials();
    this.sites = account.sites();
  }

  /** An account that is known by other means than a password, without a person. */
  public static SignedIn as(String username, Role role, Set<UUID> sites) {
    return new SignedIn(new Account(username, "", role, null, sites), null);
  }

  public Role role() {
    return role;
  }

  public @Nullable UUID personId() {
    return personId;
  }

  /** Initials of the account's person; the user name of an account without one. */
  public String initials() {
    return initials;
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
