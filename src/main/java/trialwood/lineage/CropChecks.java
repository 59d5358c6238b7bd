package trialwood.lineage;

import java.util.List;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The checks of all crops. */
public interface CropChecks extends JpaRepository<CropCheck, UUID> {

  List<CropCheck> findByCropId(UUID cropId);
}
