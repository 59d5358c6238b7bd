package trialwood.people;

import jakarta.persistence.EntityManager;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.envers.AuditReaderFactory;
import org.hibernate.envers.query.AuditEntity;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import trialwood.record.Refused;
import trialwood.record.Revision;

/** Takes persons and accounts in, and changes what is said of them. */
@Service
@Transactional
public class Household {

  private final Persons persons;
  private final Accounts accounts;
  private final Passwords passwords;
  private final EntityManager entities;

  Household(Persons persons, Accounts accounts, Passwords passwords, EntityManager entities) {
    this.persons = persons;
    this.accounts = accounts;
    this.passwords = passwords;
    this.entities = entities;
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
      throw new Refused(
          "version", "Somebody else changed this meanwhile. Look at both, then send it again.");
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

  /** What was said of the person, newest first. */
  @Transactional(readOnly = true)
  public List<PersonChange> historyOf(UUID personId) {
    List<?> revisions =
        AuditReaderFactory.get(entities)
            .createQuery()
            .forRevisionsOfEntity(Person.class, false, true)
            .add(AuditEntity.id().eq(personId))
            .addOrder(AuditEntity.revisionNumber().desc())
            .getResultList();
    return revisions.stream().map(Object[].class::cast).map(Household::change).toList();
  }

  private static PersonChange change(Object[] row) {
    Person person = (Person) row[0];
    Revision revision = (Revision) row[1];
    return new PersonChange(
        revision.at(), revision.username(), person.name(), person.duty(), person.isActive());
  }
}
