package trialwood.people;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.stereotype.Service;

/** Finds the account behind a sign-in. */
@Service
class AccountLookup implements UserDetailsService {

  private final Accounts accounts;
  private final Persons persons;

  AccountLookup(Accounts accounts, Persons persons) {
    this.accounts = accounts;
    this.persons = persons;
  }

  @Override
  public UserDetails loadUserByUsername(String username) {
    return accounts
        .findByUsername(username)
        .map(account -> new SignedIn(account, personOf(account)))
        .orElseThrow(() -> new UsernameNotFoundException("No such account."));
  }

  private @Nullable Person personOf(Account account) {
    return Optional.ofNullable(account.personId()).flatMap(persons::findById).orElse(null);
  }
}
