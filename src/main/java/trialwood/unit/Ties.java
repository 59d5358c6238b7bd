package trialwood.unit;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.springframework.data.jpa.repository.JpaRepository;

/** Everything that was said about whose plant a unit is. */
public interface Ties extends JpaRepository<Tie, Long> {

  List<Tie> findByUnitIdOrderById(UUID unitId);

  List<Tie> findByUnitIdIn(Collection<UUID> unitIds);

  /** The sayings of one correction, in their order. */
  List<Tie> findByCorrectionIdOrderById(UUID correctionId);

  /** The units these ties speak of. */
  static Set<UUID> unitsOf(Collection<Tie> ties) {
    return ties.stream().map(Tie::unitId).collect(Collectors.toUnmodifiableSet());
  }
}
