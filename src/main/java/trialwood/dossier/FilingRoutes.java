package trialwood.dossier;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** The ways to protect a variety. */
public interface FilingRoutes extends JpaRepository<FilingRoute, UUID> {

  List<FilingRoute> findAllByOrderByCode();

  Optional<FilingRoute> findByCode(String code);
}
