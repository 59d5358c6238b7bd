package trialwood.trial;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The entries of all trials. */
public interface TrialEntries extends JpaRepository<TrialEntry, UUID> {

  List<TrialEntry> findByTrialIdOrderById(UUID trialId);

  Optional<TrialEntry> findByTrialIdAndAccessionId(UUID trialId, UUID accessionId);

  boolean existsByTrialIdAndAccessionId(UUID trialId, UUID accessionId);
}
