package trialwood.people;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The accounts that may sign in. */
public interface Accounts extends JpaRepository<Account, UUID> {

  Optional<Account> findByUsername(String username);
}
