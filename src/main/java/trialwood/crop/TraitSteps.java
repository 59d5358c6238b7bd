package trialwood.crop;

import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The steps of all scales. */
public interface TraitSteps extends JpaRepository<TraitStep, UUID> {

  List<TraitStep> findByTraitIdInOrderByTraitIdAscScaleAscStepAsc(Collection<UUID> traitIds);
}
