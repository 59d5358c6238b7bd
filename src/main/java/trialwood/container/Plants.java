package trialwood.container;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All numbered plants. */
public interface Plants extends JpaRepository<Plant, UUID> {}
