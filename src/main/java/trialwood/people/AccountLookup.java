package trialwood.people;

import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;

/** Finds the account behind a sign-in. */
@Service
class AccountLookup implements UserDetailsService {

  private final Accounts accounts;

  AccountLookup(Accounts accounts) {
    this.accounts = accounts;
  }

  @Override
  public UserDetails loadUserByUsername(String username) {
    return accounts
        .findByUsername(username)
        .map(SignedIn::new)
        .orElseThrow(() -> new UsernameNotFoundException("No such account."));
  }
}
