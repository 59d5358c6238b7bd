package trialwood.trial;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Where the trials stand. */
public interface TrialSites extends JpaRepository<TrialSite, UUID> {

  List<TrialSite> findByTrialIdOrderById(UUID trialId);

  Optional<TrialSite> findByTrialIdAndSiteId(UUID trialId, UUID siteId);

  boolean existsByTrialIdAndSiteId(UUID trialId, UUID siteId);
}
