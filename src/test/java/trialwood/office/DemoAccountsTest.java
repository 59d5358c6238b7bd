package trialwood.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.env.MockEnvironment;
import org.springframework.transaction.annotation.Transactional;
import trialwood.people.Account;
import trialwood.people.Accounts;
import trialwood.people.Household;
import trialwood.people.Person;
import trialwood.people.Persons;
import trialwood.people.Role;
import trialwood.site.Site;
import trialwood.site.Sites;
import trialwood.testing.ApplicationTest;

@ApplicationTest
@Transactional
class DemoAccountsTest {

  @Autowired Accounts accounts;
  @Autowired Household household;
  @Autowired Persons persons;
  @Autowired Sites sites;

  @Test
  void one_account_a_role_tied_to_the_demo_s_persons_and_sites() {
    accounts.deleteAll();
    persons.deleteAll();
    sites.deleteAll();
    Person runa = household.takeIn("RA", "Runa Aldery", "breeder");
    Site hill = sites.save(new Site("CH", "Corrow Hill", null, null, null, null, null));
    DemoAccounts demo =
        new DemoAccounts(accounts, household, persons, sites, new MockEnvironment());

    demo.create();
    demo.create();

    assertThat(accounts.findAll())
        .extracting(Account::role)
        .containsExactlyInAnyOrder(Role.values());
    assertThat(accounts.findByUsername("breeder").orElseThrow().personId()).isEqualTo(runa.id());
    assertThat(accounts.findByUsername("cooperator").orElseThrow().sites())
        .isEqualTo(Set.of(hill.id()));
  }

  @Test
  void where_somebody_has_an_account_the_demo_opens_none() {
    accounts.deleteAll();
    household.open("mine", "records of my own", Role.BREEDER, null, Set.of());

    new DemoAccounts(accounts, household, persons, sites, new MockEnvironment()).create();

    assertThat(accounts.findAll()).extracting(Account::username).containsExactly("mine");
  }
}
