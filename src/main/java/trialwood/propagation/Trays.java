package trialwood.propagation;

import jakarta.persistence.LockModeType;
import java.util.Optional;
import java.util.UUID;
import org.springframework.data.jpa.repository.JpaRepository;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.jpa.repository.Query;

/** All trays. */
public interface Trays extends JpaRepository<Tray, UUID> {

  /** Takes the tray for this transaction: its counts are judged against each other. */
  @Lock(LockModeType.PESSIMISTIC_WRITE)
  @Query("select t from Tray t where t.unitId = :id")
  Optional<Tray> take(UUID id);
}
