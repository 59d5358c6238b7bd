package trialwood.trial;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The plots of all trials. */
public interface Plots extends JpaRepository<Plot, UUID> {

  List<Plot> findByTrialSiteIdIn(Collection<UUID> trialSiteIds);
}
