package trialwood.people;

import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Refused;

/** Takes persons and accounts in, and changes what is said of them. */
@Service
@Transactional
public class Household {

  private final Persons persons;
  private final Accounts accounts;
  private final Passwords passwords;

  Household(Persons persons, Accounts accounts, Passwords passwords) {
    this.persons = persons;
    this.accounts = accounts;
    this.passwords = passwords;
  }

  public Person takeIn(String initials, String name, @Nullable String duty) {
    Person person = new Person(initials, name, duty);
    if (persons.findByInitials(person.initials()).isPresent()) {
      throw new Refused("initials", "Somebody already signs with " + person.initials() + ".");
    }
    return persons.save(person);
  }

  /**
   * Changes what is said of a person.
   *
   * @param version of the person when the page was opened; refused beside it when somebody else has
   *     changed the person since
   */
  public void describe(
      UUID personId, int version, String name, @Nullable String duty, boolean active) {
    Person person = persons.findById(personId).orElseThrow();
    if (person.version() != version) {
      throw Refused.changedMeanwhile();
    }
    person.describe(name, duty, active);
  }

  /**
   * @param personId whose initials are offered first; none for a shared phone
   * @param sites of a cooperator; empty for every other role
   */
  public Account open(
      String username, String password, Role role, @Nullable UUID personId, Set<UUID> sites) {
    Account account = new Account(username, passwords.hashed(password), role, personId, sites);
    if (accounts.findByUsername(account.username()).isPresent()) {
      throw new Refused("username", "This user name is taken.");
    }
    return accounts.save(account);
  }

  public Account close(UUID accountId) {
    Account account = accounts.findById(accountId).orElseThrow();
    account.close();
    return account;
  }

  public Account reopen(UUID accountId) {
    Account account = accounts.findById(accountId).orElseThrow();
    account.reopen();
    return account;
  }
}
