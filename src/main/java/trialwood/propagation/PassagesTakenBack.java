package trialwood.propagation;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** Passages between trays that were taken back. */
public interface PassagesTakenBack extends JpaRepository<PassageTakenBack, UUID> {}
