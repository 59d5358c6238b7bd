package trialwood.office;

import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import trialwood.people.Role;

/** The accounts as listed: one statement, however many there are. */
@Component
class AccountRows {

  private final JdbcClient jdbc;

  AccountRows(JdbcClient jdbc) {
    this.jdbc = jdbc;
  }

  /**
   * @param initials of the account's person, if it has one
   * @param sites codes of the sites a cooperator may see
   */
  record AccountRow(
      UUID id,
      String username,
      Role role,
      boolean enabled,
      @Nullable String initials,
      @Nullable String sites) {}

  List<AccountRow> all() {
    return jdbc.sql(
            """
            select a.id, a.username, a.role, a.enabled, p.initials,
                   string_agg(s.code, ', ' order by s.code) as sites
            from account a
            left join person p on p.id = a.person_id
            left join account_site x on x.account_id = a.id
            left join site s on s.id = x.site_id
            group by a.id, a.username, a.role, a.enabled, p.initials
            order by a.username
            """)
        .query(AccountRow.class)
        .list();
  }
}
