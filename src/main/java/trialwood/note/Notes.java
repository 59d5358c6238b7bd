package trialwood.note;

import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All notes. */
public interface Notes extends JpaRepository<Note, UUID> {

  boolean existsBySupersedesId(UUID earlier);
}
