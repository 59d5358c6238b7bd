package trialwood.note;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All photographs. */
public interface Photographs extends JpaRepository<Photograph, UUID> {}
