package trialwood.trial;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** What befell the sites. */
public interface SiteEvents extends JpaRepository<SiteEvent, UUID> {

  boolean existsByCode(String code);

  Optional<SiteEvent> findByCode(String code);
}
