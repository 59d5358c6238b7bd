package trialwood.unit;

import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import trialwood.record.CodeKey;

/** All units. */
public interface Units extends JpaRepository<Unit, UUID> {

  Optional<Unit> findByLabelKey(String labelKey);

  boolean existsByLabelKey(String labelKey);

  /** Finds a label however it was typed or scanned. */
  default Optional<Unit> labelled(String typed) {
    return findByLabelKey(CodeKey.of(typed));
  }
}
