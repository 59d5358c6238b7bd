package trialwood.field;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;

/** All field tags. */
public interface FieldTags extends JpaRepository<FieldTag, UUID> {

  boolean existsByLivePosition(String position);

  Optional<FieldTag> findByAccessionId(UUID accessionId);
}
