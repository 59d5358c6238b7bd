package trialwood.office;

import jakarta.validation.constraints.NotNull;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import trialwood.people.Role;
import trialwood.web.Form;

/** What opens an account. */
record AccountForm(
    @Nullable UUID formKey,
    @Nullable String username,
    @Nullable String password,
    @NotNull(message = "Choose what the account may do.") @Nullable Role role,
    @Nullable UUID person,
    @Nullable Set<UUID> sites)
    implements Form {

  AccountForm {
    username = username == null ? "" : username;
    password = password == null ? "" : password;
    sites = sites == null ? Set.of() : sites;
  }

  static AccountForm blank() {
    return new AccountForm(UUID.randomUUID(), "", "", null, null, Set.of());
  }
}
