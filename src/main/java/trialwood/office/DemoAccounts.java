package trialwood.office;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Accounts;
import trialwood.people.Household;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.site.Site;
import trialwood.site.Sites;

/**
 * Accounts to look around with, in the demo only. Call {@link #create()} when the demo's persons
 * and sites are there; the console names the accounts at the end of the start.
 */
@Component
@Profile("demo")
public class DemoAccounts {

  /** No secret: it stands in the guide, and no account outside the demo has it. */
  public static final String PASSWORD = "a walk along the rows";

  private static final List<DemoAccount> ACCOUNTS =
      List.of(
          new DemoAccount("admin", Role.ADMINISTRATOR, null, null),
          new DemoAccount("breeder", Role.BREEDER, "RA", null),
          new DemoAccount("bench", Role.BENCH, "JT", null),
          new DemoAccount("dossier", Role.DOSSIER, "LW", null),
          new DemoAccount("reader", Role.READER, null, null),
          new DemoAccount("cooperator", Role.COOPERATOR, "GP", "CH"));

  private final Accounts accounts;
  private final Household household;
  private final Persons persons;
  private final Sites sites;
  private final Environment environment;

  DemoAccounts(
      Accounts accounts,
      Household household,
      Persons persons,
      Sites sites,
      Environment environment) {
    this.accounts = accounts;
    this.household = household;
    this.persons = persons;
    this.sites = sites;
    this.environment = environment;
  }

  private record DemoAccount(
      String username, Role role, @Nullable String initials, @Nullable String site) {}

  /** Opens the accounts if there is none; a cooperator only where the site exists. */
  @Transactional
  public void create() {
    if (accounts.count() == 0) {
      ACCOUNTS.forEach(this::open);
    }
  }

  @EventListener(ApplicationReadyEvent.class)
  @Order(Ordered.LOWEST_PRECEDENCE - 1)
  @Transactional
  public void createAndPrint() {
    create();
    System.out.printf(
        "%nThe demo nursery is open: http://localhost:%s%n  sign in as %s%n  password: %s%n%n",
        environment.getProperty("local.server.port", "8080"),
        String.join(", ", ACCOUNTS.stream().map(DemoAccount::username).toList()),
        PASSWORD);
  }

  private void open(DemoAccount demo) {
    Optional<UUID> site = Optional.ofNullable(demo.site).flatMap(sites::findByCode).map(Site::id);
    if (demo.role == Role.COOPERATOR && site.isEmpty()) {
      return;
    }
    UUID person =
        Optional.ofNullable(demo.initials)
            .flatMap(persons::findByInitials)
            .map(Person::id)
            .orElse(null);
    household.open(demo.username, PASSWORD, demo.role, person, site.map(Set::of).orElse(Set.of()));
  }
}
